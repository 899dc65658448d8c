import { median } from '../../numeric/index.js';
import type { DatedString } from './first-string.js';

/** Strings of one machine in one month by one instrument, taken together. */
export interface LevelCell {
  readonly machineId: string;
  readonly month: number;
  readonly instrument: string;
  readonly runs: number;
  readonly weight: number;
  readonly day: number;
  readonly offM: number;
  /** Weighted squares about that mean. */
  readonly squares: number;
}

export interface LevelFit {
  readonly machines: readonly MonthOfMachine[];
  /** By the name of an instrument's part of time, m; only differences mean something. */
  readonly instruments: ReadonlyMap<string, number>;
  readonly restSquares: number;
  /** Of a string about its levels. */
  readonly variance: number;
}

export interface MonthOfMachine {
  readonly machineId: string;
  /** Mean day of its strings. */
  readonly day: number;
  /** Mean off, whatever it was measured with, and its standard uncertainty, m. */
  readonly offM: number;
  readonly u: number;
  readonly runs: number;
}

export function levelCells(strings: readonly DatedString[]): readonly LevelCell[] {
  const gathered = new Map<string, DatedString[]>();
  for (const string of strings) {
    const name = `${string.month} ${string.machineId} ${string.instrument}`;
    const known = gathered.get(name);
    if (known) known.push(string);
    else gathered.set(name, [string]);
  }
  return [...gathered.values()].map((own) => {
    const { machineId, month, instrument } = own[0]!;
    const weight = own.reduce((sum, each) => sum + each.weight, 0);
    const offM = own.reduce((sum, each) => sum + each.weight * each.offM, 0) / weight;
    return {
      machineId,
      month,
      instrument,
      runs: own.length,
      weight,
      day: own.reduce((sum, { day }) => sum + day, 0) / own.length,
      offM,
      squares: own.reduce((sum, each) => sum + each.weight * (each.offM - offM) ** 2, 0),
    };
  });
}

/**
 * Takes apart what machines do and what instruments read: off = machine in that month + instrument, by weighted least
 * squares, one factor held while the other is taken (backfitting; J. Friedman & W. Stuetzle, J. Amer. Statist. Assoc.
 * 76 (1981) 817). That can be told only where machines were measured with more than one instrument. `partOf` names the
 * instrument, and the part of time in which it reads one way. The middle instrument (median) is taken as true.
 */
export function fitLevels(
  cells: readonly LevelCell[],
  partOf: (instrument: string, month: number) => string,
): LevelFit {
  const parts = cells.map(({ instrument, month }) => partOf(instrument, month));
  const names = cells.map(({ machineId, month }) => `${month} ${machineId}`);
  const months = new Map<string, number>();
  const instruments = new Map<string, number>();
  for (let round = 0; round < ROUNDS; round++) {
    setLevels(cells, { levels: months, names }, { levels: instruments, names: parts });
    setLevels(cells, { levels: instruments, names: parts }, { levels: months, names });
  }
  const middle = median([...instruments.values()]);
  let weights = 0;
  let restSquares = 0;
  cells.forEach(({ weight, offM, squares }, at) => {
    weights += weight;
    restSquares += squares + weight * (offM - months.get(names[at]!)! - instruments.get(parts[at]!)!) ** 2;
  });
  const variance = restSquares / Math.max(1, weights - months.size - instruments.size + 1);
  return {
    machines: [...months].map(([name, offM]) => {
      const own = cells.filter((_, at) => names[at] === name);
      const weight = own.reduce((sum, each) => sum + each.weight, 0);
      const runs = own.reduce((sum, each) => sum + each.runs, 0);
      return {
        machineId: own[0]!.machineId,
        day: own.reduce((sum, each) => sum + each.runs * each.day, 0) / runs,
        offM: offM + middle,
        u: Math.sqrt(variance / weight),
        runs,
      };
    }),
    instruments: new Map([...instruments].map(([part, offM]) => [part, offM - middle])),
    restSquares,
    variance,
  };
}

/** Where machines meet other instruments now and then, it settles long before. */
const ROUNDS = 80;

interface Factor {
  readonly levels: Map<string, number>;
  readonly names: readonly string[];
}

/** Sets each level to the weighted mean of what the other factor leaves. */
function setLevels(cells: readonly LevelCell[], factor: Factor, other: Factor): void {
  const sums = new Map<string, { weight: number; sum: number }>();
  cells.forEach(({ weight, offM }, at) => {
    const name = factor.names[at]!;
    const known = sums.get(name) ?? { weight: 0, sum: 0 };
    known.weight += weight;
    known.sum += weight * (offM - (other.levels.get(other.names[at]!) ?? 0));
    sums.set(name, known);
  });
  for (const [name, { weight, sum }] of sums) factor.levels.set(name, sum / weight);
}
