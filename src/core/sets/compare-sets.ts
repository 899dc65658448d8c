import { compensatedSum } from '../numeric/index.js';
import type { ChosenSet, ChosenString, GivenUp, SetDifference, SetMeasure } from './chosen-set.js';
import type { SetQuestion } from './set-chain.js';

/** A set before it is compared with the others shown. */
export interface RankedSet {
  readonly strings: readonly ChosenString[];
  readonly cost: number;
}

/** What is smaller by less than this is the same to any hand: 0.1 %. Counts differ by one or not at all. */
const NO_DIFFERENCE = 1e-3;

/** Sets side by side: what each is best at, what it gives up, and where it differs from the first. */
export function compareSets(ranked: readonly RankedSet[], question: SetQuestion): ChosenSet[] {
  const measured = ranked.map(({ strings }) => measures(strings, question));
  const best = (measure: SetMeasure): number =>
    Math.min(...measured.map((measures) => measures.get(measure)!.value));
  return ranked.map(({ strings, cost }, index) => {
    const bestAt: SetMeasure[] = [];
    const givesUp: GivenUp[] = [];
    for (const [measure, { value, position }] of measured[index]!) {
      const bestOfShown = best(measure);
      if (value <= bestOfShown + NO_DIFFERENCE) bestAt.push(measure);
      else givesUp.push({ in: measure, value, bestOfShown, ...(position === undefined ? {} : { position }) });
    }
    return {
      strings,
      cost,
      totalTensionN: compensatedSum(strings.map((string) => string.tensionN)),
      bestAt,
      givesUp,
      differences: differences(ranked[0]!.strings, strings),
    };
  });
}

interface Measured {
  readonly value: number;
  readonly position?: number;
}

function measures(strings: readonly ChosenString[], question: SetQuestion): Map<SetMeasure, Measured> {
  const { positions, sets } = question;
  const count = (of: (string: ChosenString) => number): Measured => ({
    value: strings.reduce((sum, string) => sum + of(string), 0),
  });
  const found = new Map<SetMeasure, Measured>([
    ['pull', largest(strings, (string) => Math.abs(string.tensionN / string.wishedTensionN - 1))],
    ['step', largest(strings, (string, index) => offStep(strings, positions, index, string))],
    ['strength', largest(strings, (string) => string.stressShare ?? 0)],
    ['to-wind', count(({ candidate }) => (candidate.onShelf < sets ? 1 : 0))],
    ['new-recipes', count(({ candidate }) => (candidate.newRecipe ? 1 : 0))],
    ['extra-wires', count(({ candidate }) => candidate.extraWires ?? 0)],
  ]);
  if (positions.some((position) => position.targetBendForceN !== undefined))
    found.set('bend', largest(strings, offBend));
  return found;
}

function offStep(
  strings: readonly ChosenString[],
  positions: SetQuestion['positions'],
  index: number,
  string: ChosenString,
): number {
  const next = strings[index + 1];
  if (!next) return 0;
  const wished = positions[index]!.stepToNext ?? Math.log(string.wishedTensionN / next.wishedTensionN);
  return Math.abs(Math.log(string.tensionN / next.tensionN) - wished);
}

const offBend = ({ bendForceN, wishedBendForceN }: ChosenString): number =>
  wishedBendForceN === undefined || bendForceN === undefined
    ? 0
    : Math.abs(bendForceN / wishedBendForceN - 1);

function largest(
  strings: readonly ChosenString[],
  of: (string: ChosenString, index: number) => number,
): Measured {
  const values = strings.map(of);
  const value = Math.max(...values);
  return { value, position: strings[values.indexOf(value)]!.position };
}

function differences(first: readonly ChosenString[], here: readonly ChosenString[]): SetDifference[] {
  return here.flatMap((string, index) => {
    const other = first[index]!;
    const a = look(other);
    const b = look(string);
    if (a.gaugeThou === b.gaugeThou && a.kind === b.kind && a.material === b.material) return [];
    return [
      { position: string.position, first: a, here: b, tensionChangeN: string.tensionN - other.tensionN },
    ];
  });
}

const look = ({ candidate: { gaugeThou, kind, material } }: ChosenString) => ({ gaugeThou, kind, material });
