import { useMemo } from 'react';
import { useReading } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { asEntered } from './as-entered.js';

/** The packing room as it will be once all that was entered here has arrived. */
export function usePacking() {
  const question = useReading('packing-roll', {});
  const picks = useQueued('pick-string').coming;
  const unpicks = useQueued('unpick-string').coming;
  const seals = useQueued('seal-pack').coming;
  const { data } = question;
  const packing = useMemo(
    () => (data ? asEntered(data, [...picks, ...unpicks, ...seals]) : undefined),
    [data, picks, unpicks, seals],
  );
  return { question, packing };
}
