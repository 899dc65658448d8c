import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { ReadingAnswer, ReadingQuery } from '../../contract/index.js';
import { client, orRefused } from './client.js';

type Listed = 'tallies' | 'measurements' | 'end-checks';
type RowOf<Name extends Listed> = ReadingAnswer<Name>['items'][number];

/** All that was counted or measured of one run or lot, however many pages it is, the oldest first. */
export const useWholeReading = <Name extends Listed>(
  name: Name,
  query: Omit<ReadingQuery<Name>, 'after' | 'limit'>,
): UseQueryResult<readonly RowOf<Name>[]> =>
  useQuery({ queryKey: ['reading', name, query, 'whole'], queryFn: () => wholeOf(name, query) });

async function wholeOf<Name extends Listed>(name: Name, query: object): Promise<readonly RowOf<Name>[]> {
  const rows: RowOf<Name>[] = [];
  let after: string | undefined;
  do {
    const asked = { ...query, limit: 500, ...(after === undefined ? {} : { after }) };
    const page: { readonly items: readonly RowOf<Name>[]; readonly next?: string } = await orRefused(
      client.read(name, asked as ReadingQuery<Name>),
    );
    rows.push(...page.items);
    after = page.next;
  } while (after !== undefined);
  return rows.toSorted((one, other) => (one.at === other.at ? 0 : one.at < other.at ? -1 : 1));
}
