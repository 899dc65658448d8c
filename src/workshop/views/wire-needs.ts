import type { Need, WireCover } from '../../contract/index.js';
import { coverDays, kgFromMg, WIRE_COVER_PRACTICE_DAYS } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { NeedsOf } from './needs-of.js';

/** Four weeks: long enough that one large run does not tell the tale, short enough to follow the season. */
const LOOKED_BACK_DAYS = 28;
const A_DAY_MS = 86_400_000;

/** Wires that last fewer days than wanted, if use goes on as in the last weeks; the shortest cover first. */
export const wireNeeds: NeedsOf = async (tx, now) =>
  (await wireCovers(tx, now))
    .flatMap((cover) => {
      const { coverDays: days = Number.POSITIVE_INFINITY, wantedDays } = cover;
      if (days >= wantedDays) return [];
      const urgency = days < wantedDays / 3 ? 'now' : 'soon';
      return [{ kind: 'wire-low', urgency, ...cover, coverDays: days } satisfies Need];
    })
    .sort((a, b) => a.coverDays - b.coverDays);

/** Every wire of the shop: what is on hand, what was used of late, and how long it lasts so. */
export async function wireCovers(tx: ReadTransaction, now: string): Promise<readonly WireCover[]> {
  const [settled] = await tx.records.all('settings');
  const own = settled?.body.limits?.wireCoverDays;
  const wantedDays = own ?? WIRE_COVER_PRACTICE_DAYS;
  const basis = own === undefined ? 'common-practice' : 'shop';
  const overDays = await daysOnRecord(tx, now);
  const usedMg = await usedSince(tx, new Date(Date.parse(now) - overDays * A_DAY_MS).toISOString());
  const onHandMg = await wireOnHand(tx);
  return (await tx.records.all('wire')).map(({ id, body: { name } }) => {
    const onHandKg = kgFromMg(onHandMg.get(id) ?? 0);
    const usedKg = kgFromMg(usedMg.get(id) ?? 0);
    const days = coverDays({ onHandKg, usedKg, overDays });
    return {
      wireId: id,
      name,
      onHandKg,
      usedKg,
      overDays,
      ...(Number.isFinite(days) ? { coverDays: days } : {}),
      wantedDays,
      basis,
    };
  });
}

/** The days to look back over; fewer in a shop whose records are younger. */
async function daysOnRecord({ ledger }: Pick<ReadTransaction, 'ledger'>, now: string): Promise<number> {
  const [first] = (await ledger.movements({ order: 'oldest', limit: 1 })).items;
  const days = first ? Math.ceil((Date.parse(now) - Date.parse(first.at)) / A_DAY_MS) : 1;
  return Math.min(LOOKED_BACK_DAYS, Math.max(1, days));
}

/** By the wire's id, mg. */
async function usedSince({ ledger }: Pick<ReadTransaction, 'ledger'>, since: string) {
  const used = await ledger.outflow({ accountPrefix: 'spool/', what: 'use', since });
  return new Map(
    used.filter(({ unit }) => unit === 'mg').map(({ item, quantity }) => [wireOf(item), quantity]),
  );
}

/** By the wire's id, mg; what is in quarantine cannot be wound. */
async function wireOnHand({ ledger, records }: Pick<ReadTransaction, 'ledger' | 'records'>) {
  const barred = new Set(
    (await records.all('spool', { state: 'quarantined' })).map(({ id }) => `spool/${id}`),
  );
  const onHand = new Map<string, number>();
  for (const { account, item, unit, quantity } of await ledger.balances({ accountPrefix: 'spool/' }))
    if (unit === 'mg' && !barred.has(account))
      onHand.set(wireOf(item), (onHand.get(wireOf(item)) ?? 0) + quantity);
  return onHand;
}

const wireOf = (item: string): string => item.slice('wire/'.length);
