import { TextInput } from '@mantine/core';
import { useState } from 'react';
import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useWords } from '../../words/language.js';
import { CLOSE_WORDS } from '../../words/machine.js';

/** Ends a run without a lot. It cannot be undone, so it is asked. */
export function GiveUpRun({ run }: { readonly run: RecordOf<'run'> }) {
  const words = useWords(CLOSE_WORDS);
  const abandon = useQueued('abandon-run');
  const [asks, setAsks] = useState(false);
  const [reason, setReason] = useState('');
  const enter = async () => {
    setAsks(false);
    await abandon.enter(
      { runId: run.id, expectedVersion: run.version, reason: reason.trim() },
      { label: words.gaveUp(run.body.name) },
    );
  };
  return (
    <>
      <Button kind="grave" size="floor" onClick={() => setAsks(true)}>
        {words.giveUp}
      </Button>
      <Dialog
        title={words.giveUpTitle}
        open={asks}
        onClose={() => setAsks(false)}
        actions={
          <Button kind="grave" disabled={reason.trim() === ''} onClick={() => void enter()}>
            {words.giveUp}
          </Button>
        }
      >
        <p>{words.giveUpMore}</p>
        <TextInput
          label={words.giveUpWhy}
          value={reason}
          autoComplete="off"
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      </Dialog>
    </>
  );
}
