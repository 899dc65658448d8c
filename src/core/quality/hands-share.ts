import { grouped } from '../foundation/index.js';
import { fRatio, oneWay } from '../stats/index.js';
import type { RunValue } from './run-seen.js';
import { withoutFactors } from './without-factors.js';

/** How much hands have to do with it, once everything else is out of the figures. Nobody is named. */
export interface HandsShare {
  readonly winders: number;
  /** Of what is left of the scatter between runs, the share that lies between winders, 0 to 1. */
  readonly share: number;
  /** Chance of as much between winders who wind alike. */
  readonly p: number;
}

/** Our own choice, no source: fewer runs say nothing of a hand. */
const LEAST_RUNS = 10;

/**
 * What lies between winders after machine, recipe, instrument and every lot of wire are taken out of the runs: the part
 * of variance between them, (mean square between - within)/n0 over itself and the mean square within (R. Fisher; analysis
 * of variance, one way). Where each machine is only ever worked by one person, people cannot be told from machines, and
 * there is no answer; nor where fewer than two winders have runs enough.
 */
export function handsShare(values: readonly RunValue[]): HandsShare | undefined {
  const known = values.filter(({ run }) => run.winderId !== null);
  if (!isShared(known)) return undefined;
  const factors = [
    known.map(({ run }) => run.machineId),
    known.map(({ run }) => run.recipeId),
    known.map(({ instrument }) => instrument),
    oftenEnough(known.map(({ run }) => run.lots.toSorted().join())),
  ];
  const rest = withoutFactors(
    known.map(({ value }) => value),
    factors,
  );
  const left = known.map(({ run }, at) => ({ winderId: run.winderId!, value: rest[at]! }));
  const groups = [...grouped(left, ({ winderId }) => winderId).values()]
    .map((own) => own.map(({ value }) => value))
    .filter(({ length }) => length >= LEAST_RUNS);
  const found = groups.length < 2 ? undefined : oneWay(groups);
  if (!found?.ok) return undefined;
  const { betweenSquares, withinSquares, degreesOver } = found.value;
  // Each level that was taken out has used up a run.
  const taken = factors.reduce((sum, names) => sum + new Set(names).size - 1, 0);
  const degreesUnder = found.value.degreesUnder - taken;
  if (degreesUnder < 1) return undefined;
  const within = withinSquares / degreesUnder;
  const all = groups.reduce((sum, { length }) => sum + length, 0);
  const evenly = (all - groups.reduce((sum, { length }) => sum + length ** 2, 0) / all) / degreesOver;
  const between = Math.max(0, (betweenSquares / degreesOver - within) / evenly);
  return {
    winders: groups.length,
    share: between / (between + within),
    p: fRatio(degreesOver, degreesUnder).above(betweenSquares / degreesOver / within),
  };
}

/** Whether two winders have wound enough on one machine. */
const isShared = (values: readonly RunValue[]): boolean =>
  [...grouped(values, ({ run }) => run.machineId).values()].some((own) => {
    const hands = [...grouped(own, ({ run }) => run.winderId ?? '').values()];
    return hands.filter(({ length }) => length >= LEAST_RUNS).length >= 2;
  });

/** Names that come up in a few runs only are taken as one: of those nothing could be told. */
function oftenEnough(names: readonly string[]): readonly string[] {
  const counts = grouped(names, (name) => name);
  return names.map((name) => (counts.get(name)!.length < LEAST_OF_LOT ? '' : name));
}

/** Our own choice, no source. */
const LEAST_OF_LOT = 5;
