import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import type { SpoolLine } from './wire-book.js';

interface FinishDialogProps {
  readonly line: SpoolLine;
  readonly onClose: () => void;
}

/** A spool that is used up: it weighs what the empty one does, and what the books still say is the difference. */
export function FinishDialog({ line: { spool, kg, metres }, onClose }: FinishDialogProps) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const weigh = useDo('weigh-spool');
  const send = async () => {
    const { id, version, body } = spool;
    const answer = await weigh.run({ spoolId: id, expectedVersion: version, grossKg: body.tareKg });
    if (!answer.ok) return;
    tell({ text: words.finished(body.name) });
    onClose();
  };
  return (
    <Dialog
      open
      title={words.finishTitle(spool.body.name)}
      onClose={onClose}
      actions={
        <Button kind="grave" busy={weigh.busy} onClick={() => void send()}>
          {words.finish}
        </Button>
      }
    >
      <p>{words.finishLead(figures.weight(kg), figures.metres(metres))}</p>
      <ProblemBox problem={weigh.problem} />
    </Dialog>
  );
}
