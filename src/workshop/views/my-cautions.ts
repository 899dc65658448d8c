import type { ReadingAnswer } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';

type MyCautions = ReadingAnswer<'my-cautions'>;

/** More readings of the cautions than this nobody has at one machine. */
const MOST_READINGS = 100;
/** Runs of a machine that are looked through for one's own: some years of them. */
const RUNS_A_PAGE = 500;
const MOST_PAGES = 4;

/** Which cautions a person acknowledged at a machine, newest first, and when that person last started a run there. */
export async function myCautions(
  tx: ReadTransaction,
  { machineId, personId }: { readonly machineId: string; readonly personId: string | undefined },
): Promise<MyCautions> {
  if (personId === undefined) return { acknowledged: [] };
  const { items } = await tx.cautionReadings.list({ machineId, personId, limit: MOST_READINGS });
  const lastStart = await lastStartOf(tx, { machineId, personId });
  return {
    acknowledged: items.map(({ cautions, edition, at }) => ({
      cautions: [...cautions] as MyCautions['acknowledged'][number]['cautions'],
      edition,
      on: localClock(at).date,
    })),
    ...(lastStart === undefined ? {} : { lastStart: localClock(lastStart).date }),
  };
}

async function lastStartOf(
  { records }: ReadTransaction,
  { machineId, personId }: { readonly machineId: string; readonly personId: string },
): Promise<string | undefined> {
  let after: string | undefined;
  for (let page = 0; page < MOST_PAGES; page++) {
    const { items, next } = await records.list('run', {
      where: { machineId },
      limit: RUNS_A_PAGE,
      ...(after === undefined ? {} : { after }),
    });
    const own = items.flatMap(({ body }) => (body.winderId === personId ? (body.startedAt ?? []) : []));
    if (own.length > 0) return own.toSorted().at(-1);
    if (next === undefined) return undefined;
    after = next;
  }
  return undefined;
}
