import { invariant } from '../foundation/index.js';
import { pullWire } from './pull-wire.js';
import type { Spool } from './stock.js';

/** Wire that work begun or settled before will still take. */
export interface WireReserved {
  readonly wireId: string;
  readonly kg: number;
  /** Spools that are on the machine for it: they give first. */
  readonly spoolIds: readonly string[];
}

/**
 * The spools as they will weigh once that work has taken its wire: off the spools that are on its machine, and what
 * those cannot give off the others in the order in which they would be pulled. Wire that no spool has takes nothing
 * from anybody.
 *
 * Law: of each wire, what is gone is what was reserved, or all there was; no spool weighs less than nothing.
 */
export function reserveWire(spools: readonly Spool[], reserved: readonly WireReserved[]): readonly Spool[] {
  const left = new Map(spools.map(({ id, netKg }) => [id, netKg]));
  const now = (): readonly Spool[] => spools.map((spool) => ({ ...spool, netKg: left.get(spool.id) ?? 0 }));
  const missing = reserved.map((each) => ({ ...each, kg: takeMounted(each, spools, left) }));
  for (const { wireId, kg } of missing) {
    const [pull] = pullWire({ needs: [{ wireId, kg, m: 0 }], spools: now() });
    for (const { spoolId, leavesKg } of pull?.spools ?? []) left.set(spoolId, leavesKg);
  }
  return now();
}

/** Takes what it can off the spools on the machine, and gives what is missing still. */
function takeMounted(
  { wireId, kg, spoolIds }: WireReserved,
  spools: readonly Spool[],
  left: Map<string, number>,
): number {
  invariant(kg >= 0, `a weight of wire is a number from zero up, not ${kg}`);
  let missingKg = kg;
  for (const { id } of spools.filter((spool) => spool.wireId === wireId && spoolIds.includes(spool.id))) {
    const onItKg = left.get(id) ?? 0;
    const takeKg = Math.min(onItKg, missingKg);
    left.set(id, onItKg - takeKg);
    missingKg -= takeKg;
  }
  return missingKg;
}
