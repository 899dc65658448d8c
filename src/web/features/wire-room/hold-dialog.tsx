import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import type { SpoolRecord } from './wire-book.js';

interface HoldDialogProps {
  readonly spool: SpoolRecord;
  readonly onClose: () => void;
}

/** Into quarantine, or out of it: with the reason, and a way back at once. */
export function HoldDialog({ spool, onClose }: HoldDialogProps) {
  const words = useWords(WIRE_WORDS);
  const tell = useTell();
  const quarantine = useDo('quarantine-spool');
  const free = useDo('free-spool');
  const [reason, setReason] = useState('');
  const isHeld = spool.state === 'quarantined';
  const { name } = spool.body;
  const [step, back] = isHeld ? [free, quarantine] : [quarantine, free];
  const send = async () => {
    const answer = await step.run({
      spoolId: spool.id,
      expectedVersion: spool.version,
      reason: reason.trim(),
    });
    if (!answer.ok) return;
    const { version: expectedVersion } = answer.value;
    const takenBack = isHeld ? (spool.body.holdReason ?? words.tookBack) : words.tookBack;
    tell({
      text: isHeld ? words.freed(name) : words.quarantined(name),
      undo: () => void back.run({ spoolId: spool.id, expectedVersion, reason: takenBack }),
    });
    onClose();
  };
  return (
    <Dialog
      open
      title={isHeld ? words.freeTitle(name) : words.quarantineTitle(name)}
      onClose={onClose}
      actions={
        <Button kind="main" busy={step.busy} disabled={reason.trim() === ''} onClick={() => void send()}>
          {isHeld ? words.free : words.quarantine}
        </Button>
      }
    >
      <TextInput
        label={words.reason}
        value={reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <ProblemBox problem={step.problem} />
    </Dialog>
  );
}
