import type { Chance } from '../../foundation/index.js';

/** One measurement of a study to be taken. */
export interface StudyStep {
  readonly person: string;
  readonly part: string;
  /** Counted from 1. */
  readonly trial: number;
}

/**
 * The order in which a study is measured: persons by turns, each part once in a trial, parts in an order of their own in
 * every trial so that nobody remembers what they read; no part twice in a row for the same person (AIAG, Measurement
 * systems analysis, 4th ed. 2010, III B: parts at random, appraisers blind).
 */
export function studyOrder(
  { parts, persons, trials }: { parts: readonly string[]; persons: readonly string[]; trials: number },
  chance: Chance,
): readonly StudyStep[] {
  const last = new Map<string, string>();
  return Array.from({ length: trials }, (_, index) => index + 1).flatMap((trial) =>
    persons.flatMap((person) => {
      const order = shuffled(parts, chance);
      if (order.length > 1 && order[0] === last.get(person)) order.push(order.shift()!);
      last.set(person, order.at(-1)!);
      return order.map((part) => ({ person, part, trial }));
    }),
  );
}

/** R. Fisher & F. Yates, in the form of R. Durstenfeld, Communications of the ACM 7 (1964) 420. */
function shuffled<T>(items: readonly T[], chance: Chance): T[] {
  const order = [...items];
  for (let at = order.length - 1; at > 0; at--) {
    const other = chance.whole(0, at);
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
  return order;
}
