import { useMay } from './session.js';
import { useReading } from './use-records.js';
import { useWho } from './use-who.js';

export interface ChangedBy {
  readonly who: string;
  readonly useCase: string;
}

/** Who wrote a version of a record, and by what; a dash for those who may not read the journal. */
export function useChangedBy(recordId: string): (version: number) => ChangedBy {
  const may = useMay();
  const whoOf = useWho();
  const journal = useReading('journal', { recordId, limit: 200 }, { enabled: may('journal.read') });
  return (version) => {
    const entry = journal.data?.items.find(({ touched }) =>
      touched.some((one) => one.id === recordId && one.version === version),
    );
    return entry ? { who: whoOf(entry.by), useCase: entry.useCase } : NOT_KNOWN;
  };
}

const NOT_KNOWN: ChangedBy = { who: '—', useCase: '' };
