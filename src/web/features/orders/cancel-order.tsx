import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import type { OrderRecord } from './use-listed-orders.js';

/** Cancels an order, after a second thought: it does not come back. */
export function CancelOrder({ record }: { readonly record: OrderRecord }) {
  const words = useWords(ORDERS_WORDS);
  const tell = useTell();
  const [open, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const { run, busy, problem, forget } = useDo('cancel-order');
  const { id: orderId, version: expectedVersion, body } = record;
  const close = () => {
    setOpen(false);
    forget();
  };
  const cancel = async () => {
    const done = await run({ orderId, expectedVersion, reason: reason.trim() });
    if (!done.ok) return;
    close();
    tell({ text: words.cancelled(body.number) });
  };
  return (
    <>
      <Button onClick={() => setOpen(true)}>{words.cancel}</Button>
      <Dialog
        title={words.cancelTitle(body.number)}
        open={open}
        onClose={close}
        actions={
          <Button kind="grave" busy={busy} disabled={reason.trim() === ''} onClick={cancel}>
            {words.cancel}
          </Button>
        }
      >
        <p>{words.cancelMore}</p>
        <TextInput
          label={words.reason}
          description={words.reasonHint}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <ProblemBox problem={problem} />
      </Dialog>
    </>
  );
}
