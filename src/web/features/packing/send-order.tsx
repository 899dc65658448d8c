import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { useOutbox } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { OrderDue } from './orders-due.js';

/** Sends what is sealed of an order: all of it, or a part. It cannot be fetched back, so it is asked once more. */
export function SendOrder({ due, onSent }: { readonly due: OrderDue; readonly onSent?: () => void }) {
  const words = useWords(PACKING_WORDS);
  const may = useMay();
  const tell = useTell();
  const { entries, isOnline } = useOutbox();
  const { run, busy, problem, forget } = useDo('ship-order');
  const [asks, setAsks] = useState(false);
  const { order, packs, sets, sealed, sent } = due;
  const { number, player } = order.body;
  const rest = sets - sealed - sent;
  const ids = new Set(packs.map(({ id }) => id));
  const waits = entries.some(
    ({ input, state }) => state !== 'done' && 'packId' in input && ids.has(String(input.packId)),
  );
  if (!may('pack.ship') || sealed === 0) return null;
  const send = async () => {
    const answer = await run({ orderId: order.id, expectedVersion: order.version, partial: rest > 0 });
    if (!answer.ok) return;
    setAsks(false);
    tell({ text: words.sentTold(number, answer.value.shipped.length) });
    if (rest === 0) onSent?.();
  };
  const close = () => {
    forget();
    setAsks(false);
  };
  return (
    <>
      <Button
        kind={rest > 0 ? 'plain' : 'main'}
        size="floor"
        onClick={() => setAsks(true)}
        aria-label={rest > 0 ? undefined : words.sendNamed(number)}
      >
        {rest > 0 ? words.sendPart : words.send}
      </Button>
      <Dialog
        title={words.sendTitle(number)}
        open={asks}
        onClose={close}
        actions={
          isOnline &&
          !waits && (
            <Button kind="main" size="floor" busy={busy} onClick={() => void send()}>
              {words.sendNow}
            </Button>
          )
        }
      >
        <p>{rest > 0 ? words.sendSome(sealed, rest, player) : words.sendAll(sealed, player)}</p>
        <p>{waits || !isOnline ? words.sendWaits : words.sendFinal}</p>
        <ProblemBox problem={problem} />
      </Dialog>
    </>
  );
}
