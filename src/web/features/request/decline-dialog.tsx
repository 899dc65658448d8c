import { TextInput } from '@mantine/core';
import { type FormEvent, useId, useState } from 'react';
import { useDo } from '../../api/use-do.js';
import type { RecordOf } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';

interface DeclineDialogProps {
  readonly record: RecordOf<'request'>;
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Declines a request, which cannot be undone: why is asked for. */
export function DeclineDialog({ record, open, onClose }: DeclineDialogProps) {
  const { next } = useWords(REQUESTS_WORDS);
  const tell = useTell();
  const formId = useId();
  const declining = useDo('decline-request');
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const decline = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (reason.trim() === '') return;
    const { id: requestId, version: expectedVersion } = record;
    const done = await declining.run({ requestId, expectedVersion, reason: reason.trim() });
    if (!done.ok) return;
    onClose();
    tell({ text: next.declined });
  };
  return (
    <Dialog
      title={next.declineTitle(record.body.player)}
      open={open}
      onClose={onClose}
      actions={
        <Button kind="grave" type="submit" form={formId} busy={declining.busy}>
          {next.doDecline}
        </Button>
      }
    >
      <form id={formId} className={desk.form} onSubmit={(event) => void decline(event)}>
        <p>{next.declineLead}</p>
        <TextInput
          label={next.reason}
          value={reason}
          autoComplete="off"
          error={isTried && reason.trim() === '' ? next.reasonNeeded : undefined}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <ProblemBox problem={declining.problem} />
      </form>
    </Dialog>
  );
}
