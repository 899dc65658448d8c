import { useAllRecords, useReading } from '../../api/use-records.js';
import { useWords } from '../../words/language.js';
import { WEAR_WORDS } from '../../words/wear.js';

/** Names machines that drift, above the list of all; nothing where none does. */
export function WearSummary() {
  const words = useWords(WEAR_WORDS);
  const machines = useAllRecords('machine').data ?? [];
  const wear = useReading('machine-wear', {}).data;
  const lines = (wear?.machines ?? []).flatMap(({ machineId, verdict }) => {
    const body = machines.find(({ id }) => id === machineId)?.body;
    if (body?.kind !== 'winder') return [];
    if (verdict === 'drifts') return [words.summaryDrifts(body.name)];
    if (verdict !== 'replace') return [];
    return [body.drive === 'gear' ? words.summary(body.name) : words.summaryServo(body.name)];
  });
  return (
    <div role="status">
      {lines.map((line) => (
        <p key={line} className="care">
          {line} {words.summaryMore}
        </p>
      ))}
    </div>
  );
}
