import { isOf, type QueuedEntry, UndoTouch, useOutbox } from '../../outbox/index.js';

/** Takes the last touch at the coiling table back: the count of it, and the string that was taken from its bin. */
export function UndoCoiled({ lotId }: { readonly lotId: string }) {
  const { entries, discard } = useOutbox();
  const last = entries.findLast(
    (entry) => isOf(entry, 'record-tally') && entry.input.lotId === lotId && entry.state === 'waiting',
  );
  const undo = async (touched: QueuedEntry): Promise<boolean> => {
    // The count first: it is the earlier of the two, and once it is gone to the shop neither is taken back.
    const isGone = await discard(touched.number);
    const tallyId = isOf(touched, 'record-tally') ? touched.input.id : '';
    const rest = entries.filter(({ number, about }) => number !== touched.number && about.includes(tallyId));
    for (const { number } of isGone ? rest : []) await discard(number);
    return isGone;
  };
  return <UndoTouch last={last} onUndo={undo} />;
}
