import { grouped } from '../foundation/index.js';
import { holm, momentsDifference, momentsOf, momentsWithout } from '../stats/index.js';
import type { RunSeen, RunValue } from './run-seen.js';

/** What runs may be told apart by. Never by person: a list of people by their figures blames before it knows why. */
export const GROUPINGS = ['machine', 'recipe', 'lot', 'instrument'] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** Runs of one machine, recipe, lot or instrument against all others. */
export interface ComparedGroup {
  readonly name: string;
  readonly runs: number;
  readonly strings: number;
  readonly mean: number;
  /** Standard deviation between runs; left out of one run. */
  readonly spread?: number;
  /** Against all others, with the 95 % interval and the chance of as much; left out where there are too few. */
  readonly against?: {
    readonly difference: number;
    readonly from: number;
    readonly to: number;
    /** Made good for the number of groups compared. */
    readonly p: number;
  };
}

/** Welch's t of each group against all others, made good by Holm for how many there are; groups by their names. */
export function comparedGroups(values: readonly RunValue[], by: Grouping): readonly ComparedGroup[] {
  const all = momentsOf(figures(values));
  const named = values.flatMap((value) => namesOf(value, by).map((name) => ({ name, value })));
  const groups = [...grouped(named, ({ name }) => name)].map(([name, own]) => ({
    name,
    own: own.map(({ value }) => value),
    moments: momentsOf(own.map(({ value }) => value.value)),
  }));
  const tests = groups.map(({ moments }) => {
    const test = momentsDifference(momentsWithout(all, moments), moments);
    return test.ok ? test.value : undefined;
  });
  const adjusted = holm(tests.flatMap((test) => (test ? [test.p] : [])));
  let told = 0;
  return groups.map(({ name, own, moments: { mean, squares, count } }, at): ComparedGroup => {
    const test = tests[at];
    return {
      name,
      runs: own.length,
      strings: own.reduce((sum, { strings }) => sum + strings, 0),
      mean,
      ...(count < 2 ? {} : { spread: Math.sqrt(squares / (count - 1)) }),
      ...(test ? { against: { difference: test.difference, ...test.interval, p: adjusted[told++]! } } : {}),
    };
  });
}

function namesOf({ run, instrument }: RunValue, by: Grouping): readonly string[] {
  const names: Readonly<Record<Grouping, (run: RunSeen) => readonly string[]>> = {
    machine: ({ machineId }) => [machineId],
    recipe: ({ recipeId }) => [recipeId],
    lot: ({ lots }) => lots,
    instrument: () => [instrument],
  };
  return names[by](run);
}

const figures = (values: readonly RunValue[]): readonly number[] => values.map(({ value }) => value);
