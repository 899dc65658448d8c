import { TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Pack } from './packing-roll.js';

/** Gives a pack up, with a reason. There is no way back, only a new pack: so it is asked once more. */
export function GiveUpPack({ pack }: { readonly pack: Pack }) {
  const words = useWords(PACKING_WORDS);
  const tell = useTell();
  const navigate = useNavigate();
  const { run, busy, problem, forget } = useDo('void-pack');
  const [asks, setAsks] = useState(false);
  const [reason, setReason] = useState('');
  const [isMissing, setMissing] = useState(false);
  const close = () => {
    forget();
    setMissing(false);
    setAsks(false);
  };
  const giveUp = async () => {
    if (reason.trim() === '') return setMissing(true);
    const answer = await run({ packId: pack.id, expectedVersion: pack.version, reason: reason.trim() });
    if (!answer.ok) return;
    tell({ text: words.givenUp(pack.body.setName) });
    await navigate({ to: '/packing', search: {} });
  };
  return (
    <>
      <Button kind="grave" size="floor" onClick={() => setAsks(true)}>
        {words.giveUp}
      </Button>
      <Dialog
        title={words.giveUpTitle}
        open={asks}
        onClose={close}
        actions={
          <Button kind="grave" size="floor" busy={busy} onClick={() => void giveUp()}>
            {words.giveUp}
          </Button>
        }
      >
        <p>{words.giveUpMore(pack.body.picked.length)}</p>
        <TextInput
          label={words.giveUpReason}
          value={reason}
          error={isMissing && reason.trim() === '' ? words.giveUpReasonNeeded : undefined}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <ProblemBox problem={problem} />
      </Dialog>
    </>
  );
}
