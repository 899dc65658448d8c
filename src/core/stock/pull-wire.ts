import { byText, grouped, invariant } from '../foundation/index.js';
import type { Spool } from './stock.js';

/** Wire that work needs, by weight; the length goes along for the winder to read. */
export interface WireNeed {
  readonly wireId: string;
  readonly kg: number;
  readonly m: number;
}

/** Spools to carry to the machines for one kind of wire. */
export interface SpoolPull {
  readonly wireId: string;
  readonly neededKg: number;
  readonly neededM: number;
  readonly spools: readonly SpoolTake[];
  /** What no spool can give; 0 where there is enough. */
  readonly shortKg: number;
}

export interface SpoolTake {
  readonly spoolId: string;
  readonly lot: string;
  readonly takeKg: number;
  readonly leavesKg: number;
}

/**
 * Chooses the spools for each wire that is needed, one pull a wire in the order the needs first name them.
 * First in, first out by lot text: an older lot is used up before a newer one is opened, so that wire does
 * not age and a fault in a lot reaches few sets. Within the lot as few spools as can be are carried; of the
 * spools that could give the rest alone the lightest is taken, so that remnants are finished and full
 * spools stay full.
 *
 * Laws: a spool's take + what it leaves = its weight; takes + short = needed; nothing is negative.
 */
export function pullWire({
  needs,
  spools,
}: {
  readonly needs: readonly WireNeed[];
  readonly spools: readonly Spool[];
}): readonly SpoolPull[] {
  const needsByWire = grouped(needs, (need) => need.wireId);
  const spoolsByWire = grouped(spools, (spool) => spool.wireId);
  return [...needsByWire].map(([wireId, parts]) => {
    const neededKg = parts.reduce((sum, part) => sum + weight(part.kg), 0);
    const neededM = parts.reduce((sum, part) => sum + part.m, 0);
    const takes = takeFirstInFirstOut(spoolsByWire.get(wireId) ?? [], neededKg);
    return { wireId, neededKg, neededM, spools: takes.spools, shortKg: takes.shortKg };
  });
}

interface Takes {
  readonly spools: readonly SpoolTake[];
  readonly shortKg: number;
}

function takeFirstInFirstOut(spools: readonly Spool[], neededKg: number): Takes {
  const lots = grouped(spools, (spool) => spool.lot);
  const taken: SpoolTake[] = [];
  let missingKg = neededKg;
  for (const lot of [...lots.keys()].sort(byText)) {
    const open = (lots.get(lot) ?? []).filter((spool) => weight(spool.netKg) > 0).sort(lightestFirst);
    while (missingKg > 0 && open.length > 0) {
      const spool = nextOfLot(open, missingKg);
      open.splice(open.indexOf(spool), 1);
      const takeKg = Math.min(spool.netKg, missingKg);
      missingKg -= takeKg;
      taken.push({ spoolId: spool.id, lot, takeKg, leavesKg: spool.netKg - takeKg });
    }
  }
  return { spools: taken, shortKg: missingKg };
}

/** The lightest that is enough alone; where none is, the heaviest. Heaviest first needs the fewest spools. */
function nextOfLot(lightestFirst: readonly Spool[], missingKg: number): Spool {
  const spool = lightestFirst.find((candidate) => candidate.netKg >= missingKg) ?? lightestFirst.at(-1);
  invariant(spool, 'a lot with no spool left was asked for one');
  return spool;
}

const lightestFirst = (a: Spool, b: Spool): number => a.netKg - b.netKg || byText(a.id, b.id);

function weight(kg: number): number {
  invariant(Number.isFinite(kg) && kg >= 0, `a weight of wire is a number from zero up, not ${kg}`);
  return kg;
}
