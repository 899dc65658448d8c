import type { Doing } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';

interface EndDialogProps {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly action: string;
  readonly done: string;
  readonly doing: Doing<'revoke-device'> | Doing<'revoke-token'>;
  readonly onClose: () => void;
}

/** Ends a key for good, once that was confirmed. */
export function EndDialog({ id, title, lead, action, done, doing, onClose }: EndDialogProps) {
  const tell = useTell();
  const send = async () => {
    const answer = await doing.run({ id });
    if (!answer.ok) return;
    tell({ text: done });
    onClose();
  };
  return (
    <Dialog
      open
      title={title}
      onClose={onClose}
      actions={
        <Button kind="grave" busy={doing.busy} onClick={() => void send()}>
          {action}
        </Button>
      }
    >
      <p>{lead}</p>
      <ProblemBox problem={doing.problem} />
    </Dialog>
  );
}
