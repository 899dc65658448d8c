import { type Comparison, isAsGood, type RuleResult } from './compare.js';

/**
 * Each published rule with the way of releasing that needs the fewest strings among those that make runs as good as
 * ours, looked for in hindsight on this very machine: more than a shop could know. Undefined where no way does.
 */
export const inHindsight = ({ ours, published }: Comparison): Map<string, RuleResult | undefined> =>
  new Map(
    namesOf(published).map((name) => [
      name,
      fewest(
        published
          .filter((rule) => rule.name === name)
          .flatMap(({ results }) => results)
          .filter((result) => isAsGood(result, ours)),
      ),
    ]),
  );

/**
 * Each published rule with one way of releasing for every machine, as a shop would have to write it down before it
 * knows which machine it has: the fewest strings on average over the machines, as good as ours on every one. A
 * machine on which no way is as good is left out. One result a machine.
 */
export function oneForAll(
  comparisons: readonly Comparison[],
): Map<string, readonly (RuleResult | undefined)[]> {
  const published = comparisons[0]!.published;
  return new Map(
    namesOf(published).map((name) => {
      const which = published.flatMap((rule, index) => (rule.name === name ? [index] : []));
      const ways = which.flatMap((rule) =>
        published[rule]!.results.map((_, release) =>
          comparisons.map((each) => each.published[rule]!.results[release]!),
        ),
      );
      const can = comparisons.map(({ ours }, machine) => ways.some((way) => isAsGood(way[machine]!, ours)));
      const sound = ways.filter((way) =>
        way.every((result, machine) => !can[machine] || isAsGood(result, comparisons[machine]!.ours)),
      );
      const cost = (way: readonly RuleResult[]): number =>
        way.reduce((sum, { strings }, machine) => sum + (can[machine] ? strings.mean : 0), 0);
      const best = sound.reduce<readonly RuleResult[] | undefined>(
        (so, way) => (so && cost(so) <= cost(way) ? so : way),
        undefined,
      );
      return [name, comparisons.map((_, machine) => (can[machine] ? best?.[machine] : undefined))] as const;
    }),
  );
}

const namesOf = (rules: readonly { readonly name: string }[]): readonly string[] => [
  ...new Set(rules.map(({ name }) => name)),
];

const fewest = (results: readonly RuleResult[]): RuleResult | undefined =>
  results.reduce<RuleResult | undefined>(
    (best, each) => (best && best.strings.mean <= each.strings.mean ? best : each),
    undefined,
  );
