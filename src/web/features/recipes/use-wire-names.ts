import { useCallback, useMemo } from 'react';
import { useAllRecords } from '../../api/use-records.js';

/** What each wire of the shop is called, by the id of its record. */
export function useWireNames(): (id: string) => string {
  const { data } = useAllRecords('wire');
  const names = useMemo(() => new Map(data?.map(({ id, body }) => [id, body.name])), [data]);
  return useCallback((id) => names.get(id) ?? '…', [names]);
}
