import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import type { LotRecord } from './lot-record.js';

export type Judgement = 'release' | 'hold' | 'scrap';

interface JudgeDialogProps {
  readonly lot: LotRecord;
  readonly judgement: Judgement;
  readonly onClose: () => void;
}

/** A lot released, put on hold or scrapped, with the reason. A released lot that was put on hold by a slip can be released again at once. */
export function JudgeDialog({ lot, judgement, onClose }: JudgeDialogProps) {
  const words = useWords(STRINGS_WORDS);
  const may = useMay();
  const tell = useTell();
  const release = useDo('release-lot');
  const hold = useDo('hold-lot');
  const scrap = useDo('scrap-lot');
  const [reason, setReason] = useState('');
  const { name } = lot.body;
  const input = { lotId: lot.id, expectedVersion: lot.version, reason: reason.trim() };
  const doing = { release, hold, scrap }[judgement];
  const send = async () => {
    if (judgement === 'hold') {
      const answer = await hold.run(input);
      if (!answer.ok) return;
      const { version: expectedVersion } = answer.value;
      const undo = () => void release.run({ lotId: lot.id, expectedVersion, reason: words.tookBack });
      const canUndo = lot.state === 'released' && may('lot.release');
      tell({ text: words.judged.hold(name), ...(canUndo ? { undo } : {}) });
    } else {
      const answer = judgement === 'release' ? await release.run(input) : await scrap.run(input);
      if (!answer.ok) return;
      tell({ text: words.judged[judgement](name) });
    }
    onClose();
  };
  return (
    <Dialog
      open
      title={words.judgeTitle[judgement](name)}
      onClose={onClose}
      actions={
        <Button
          kind={judgement === 'scrap' ? 'grave' : 'main'}
          busy={doing.busy}
          disabled={reason.trim() === ''}
          onClick={() => void send()}
        >
          {words.judge[judgement]}
        </Button>
      }
    >
      <p>{words.judgeMeans[judgement]}</p>
      <TextInput
        label={words.reason}
        value={reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <ProblemBox problem={doing.problem} />
    </Dialog>
  );
}
