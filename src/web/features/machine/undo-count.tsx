import { isOf, UndoTouch, useOutbox } from '../../outbox/index.js';

/** Takes the last count of a run back. */
export function UndoCount({ runId }: { readonly runId: string }) {
  const { entries, discard } = useOutbox();
  const last = entries.findLast(
    (entry) => isOf(entry, 'record-tally') && entry.input.runId === runId && entry.state === 'waiting',
  );
  return <UndoTouch last={last} onUndo={({ number }) => discard(number)} />;
}
