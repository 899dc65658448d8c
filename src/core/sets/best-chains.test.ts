import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestChains, type ChainProblem } from './best-chains.js';

interface RawLink {
  readonly ticks: readonly number[];
  readonly looks: readonly number[];
}

const problemOf = (
  links: readonly RawLink[],
  pairs: readonly (readonly (readonly number[])[])[],
): ChainProblem => ({
  links: links.map(({ ticks, looks }) => ({
    ticks: Float64Array.from(ticks),
    looks: Int32Array.from(looks.toSorted((a, b) => a - b)),
  })),
  joints: pairs.map((pair) => (left: number, right: number) => pair[left]![right]!),
});

/** Small costs, so that ties abound; one pair in five is forbidden. */
const cost = fc.integer({ min: 0, max: 5 });
const pairCost = fc.oneof(
  { weight: 4, arbitrary: cost },
  { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
);
const problems = fc
  .array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 5 })
  .chain((sizes) =>
    fc.tuple(
      fc.tuple(
        ...sizes.map((size) =>
          fc.record({
            ticks: fc.array(cost, { minLength: size, maxLength: size }),
            looks: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: size, maxLength: size }),
          }),
        ),
      ),
      fc.tuple(
        ...sizes.slice(1).map((size, at) =>
          fc.array(fc.array(pairCost, { minLength: size, maxLength: size }), {
            minLength: sizes[at]!,
            maxLength: sizes[at]!,
          }),
        ),
      ),
    ),
  )
  .map(([links, pairs]) => problemOf(links, pairs));

/** Every chain there is, in order of cost and then of looks, the dearer of two that look alike left out. */
function everyChain(problem: ChainProblem): { ticks: number; looks: number[] }[] {
  let chains: { ticks: number; choices: number[] }[] = [{ ticks: 0, choices: [] }];
  problem.links.forEach((link, at) => {
    chains = chains.flatMap(({ ticks, choices }) =>
      Array.from(link.ticks, (own, choice) => ({
        ticks: ticks + own + (at === 0 ? 0 : problem.joints[at - 1]!(choices.at(-1)!, choice)),
        choices: [...choices, choice],
      })),
    );
  });
  const cheapest = new Map<string, { ticks: number; looks: number[] }>();
  for (const { ticks, choices } of chains) {
    if (ticks === Number.POSITIVE_INFINITY) continue;
    const looks = choices.map((choice, at) => problem.links[at]!.looks[choice]!);
    const known = cheapest.get(looks.join());
    if (!known || ticks < known.ticks) cheapest.set(looks.join(), { ticks, looks });
  }
  return [...cheapest.values()].sort(
    (a, b) => a.ticks - b.ticks || (a.looks.join() < b.looks.join() ? -1 : 1),
  );
}

const costOf = (problem: ChainProblem, choices: readonly number[]): number =>
  choices.reduce(
    (sum, choice, at) =>
      sum +
      problem.links[at]!.ticks[choice]! +
      (at === 0 ? 0 : problem.joints[at - 1]!(choices[at - 1]!, choice)),
    0,
  );

describe('the best chains', () => {
  it('are exactly those that trying every chain finds, in the same order, forbidden pairs and ties included', () => {
    fc.assert(
      fc.property(problems, fc.integer({ min: 1, max: 12 }), (problem, count) => {
        const found = bestChains(problem, count).map(({ ticks, choices }) => ({
          ticks,
          looks: choices.map((choice, at) => problem.links[at]!.looks[choice]!),
        }));
        expect(found).toEqual(everyChain(problem).slice(0, count));
      }),
      { numRuns: 500 },
    );
  });

  it('cost what their choices cost', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        for (const { choices, ticks } of bestChains(problem, 5)) expect(costOf(problem, choices)).toBe(ticks);
      }),
    );
  });

  it('are none where every way on is forbidden', () => {
    const link = { ticks: [0, 0], looks: [0, 1] };
    const never = Number.POSITIVE_INFINITY;
    expect(
      bestChains(
        problemOf(
          [link, link],
          [
            [
              [never, never],
              [never, never],
            ],
          ],
        ),
        3,
      ),
    ).toEqual([]);
  });
});
