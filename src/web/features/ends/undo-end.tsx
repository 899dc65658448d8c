import { isOf, UndoTouch, useOutbox } from '../../outbox/index.js';

/** Takes the last end of a run back, as long as it has not gone to the shop. */
export function UndoEnd({ runId }: { readonly runId: string }) {
  const { entries, discard } = useOutbox();
  const last = entries.findLast(
    (entry) =>
      isOf(entry, 'record-end-checks') &&
      entry.input.rows.some((row) => row.runId === runId) &&
      entry.state === 'waiting',
  );
  const undo = async () => (last && (await discard(last.number)) ? 'not-sent' : 'too-late');
  return <UndoTouch last={last} onUndo={undo} />;
}
