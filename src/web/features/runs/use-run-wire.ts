import { useQueries } from '@tanstack/react-query';
import { kgFromMg, mFromMm } from '../../../core/stock/index.js';
import { client, orRefused } from '../../api/client.js';

/** What a run took off one spool at one time. */
export interface WireTaken {
  readonly spoolId: string;
  readonly at: string;
  readonly woundKg: number;
  readonly scrapKg: number;
  readonly metres: number;
}

/** What a run took off its spools, from the movements of each, the earliest first. */
export function useRunWire(runId: string, spoolIds: readonly string[]): readonly WireTaken[] {
  return useQueries({
    queries: spoolIds.map((spoolId) => {
      const query = { account: `spool/${spoolId}`, limit: 500 };
      return {
        queryKey: ['reading', 'movements', query],
        queryFn: () => orRefused(client.read('movements', query)),
      };
    }),
    combine: (answers) =>
      answers
        .flatMap(({ data }, at) =>
          (data?.items ?? []).filter(isUseOf(runId)).map((use) => takenBy(use, spoolIds[at] ?? '')),
        )
        .toSorted((a, b) => (a.at < b.at ? -1 : 1)),
  });
}

interface Use {
  readonly at: string;
  readonly what: string;
  readonly ofId: string;
  readonly entries: readonly {
    readonly account: string;
    readonly unit: string;
    readonly quantity: number;
  }[];
}

const isUseOf =
  (runId: string) =>
  ({ what, ofId }: Use): boolean =>
    what === 'use' && ofId === runId;

function takenBy({ at, entries }: Use, spoolId: string): WireTaken {
  const came = (unit: string, isScrap: boolean | undefined) =>
    entries
      .filter(
        (entry) =>
          entry.unit === unit &&
          entry.quantity > 0 &&
          (isScrap === undefined || entry.account.startsWith('scrap/') === isScrap),
      )
      .reduce((sum, { quantity }) => sum + quantity, 0);
  return {
    spoolId,
    at,
    woundKg: kgFromMg(came('mg', false)),
    scrapKg: kgFromMg(came('mg', true)),
    metres: mFromMm(came('mm', undefined)),
  };
}
