import type { SetPosition, SetRules, SetWeights, StringCandidate } from '../../src/core/sets/index.js';

export interface PlainSetQuestion {
  readonly positions: readonly SetPosition[];
  readonly candidates: readonly StringCandidate[];
  readonly rules: SetRules;
  readonly weights: SetWeights;
}

export interface PlainSet {
  readonly ids: readonly string[];
  readonly cost: number;
}

/** Tries every set there is and keeps the best `count`. For a handful of positions only. */
export function everySet(question: PlainSetQuestion, count: number): PlainSet[] {
  const { positions, candidates } = question;
  const best: PlainSet[] = [];
  const fill = (strings: readonly StringCandidate[], cost: number): void => {
    if (strings.length === positions.length) {
      keep(best, strings, cost, count);
      return;
    }
    for (const next of candidates) {
      const more = stringCost(question, strings.length, next) + jointCost(question, strings, next);
      if (more < Number.POSITIVE_INFINITY) fill([...strings, next], cost + more);
    }
  };
  fill([], 0);
  return best;
}

/**
 * The textbook way at full size: for each string in each position a list of the `count` cheapest beginnings
 * that end with it, each list from all lists before it. Exact, where no two candidates look alike.
 */
export function bestListsPositionByPosition(question: PlainSetQuestion, count: number): PlainSet[] {
  const { positions, candidates } = question;
  let lists: { strings: StringCandidate[]; cost: number }[][] = candidates.map((candidate) => [
    { strings: [candidate], cost: stringCost(question, 0, candidate) },
  ]);
  for (let at = 1; at < positions.length; at++) {
    lists = candidates.map((next) =>
      lists
        .flatMap((list) =>
          list.map(({ strings, cost }) => ({
            strings,
            cost: cost + stringCost(question, at, next) + jointCost(question, strings, next),
          })),
        )
        .filter(({ cost }) => cost < Number.POSITIVE_INFINITY)
        .sort((a, b) => a.cost - b.cost)
        .slice(0, count)
        .map(({ strings, cost }) => ({ strings: [...strings, next], cost })),
    );
  }
  const best: PlainSet[] = [];
  for (const { strings, cost } of lists.flat()) keep(best, strings, cost, count);
  return best;
}

function keep(best: PlainSet[], strings: readonly StringCandidate[], cost: number, count: number): void {
  if (best.length === count && cost >= best.at(-1)!.cost) return;
  best.push({ ids: strings.map(({ id }) => id), cost });
  best.sort((a, b) => a.cost - b.cost);
  if (best.length > count) best.pop();
}

const pullN = (question: PlainSetQuestion, at: number, { linearDensityKgPerM }: StringCandidate): number => {
  const { speakingLengthM, frequencyHz } = question.positions[at]!;
  return linearDensityKgPerM * (2 * speakingLengthM * frequencyHz) ** 2;
};

function stringCost(question: PlainSetQuestion, at: number, candidate: StringCandidate): number {
  const { rules, weights } = question;
  const pull = pullN(question, at, candidate);
  const tooThick = candidate.kind === 'plain' && candidate.gaugeThou > rules.thickestPlainThou;
  const tooThin = candidate.kind === 'wound' && candidate.gaugeThou < rules.thinnestWoundThou;
  const breaks = pull > rules.stressLimit * candidate.breakingLoadN!;
  if (tooThick || tooThin || breaks) return Number.POSITIVE_INFINITY;
  const position = question.positions[at]!;
  return (
    position.weight * weights.pull * Math.log(pull / position.targetTensionN) ** 2 +
    (candidate.onShelf < 1 ? weights.notOnShelf : 0)
  );
}

function jointCost(
  question: PlainSetQuestion,
  before: readonly StringCandidate[],
  next: StringCandidate,
): number {
  const last = before.at(-1);
  if (!last) return 0;
  const at = before.length;
  const left = question.positions[at - 1]!;
  const right = question.positions[at]!;
  if (right.frequencyHz < left.frequencyHz) {
    if (next.gaugeThou < last.gaugeThou) return Number.POSITIVE_INFINITY;
    if (last.kind === 'wound' && next.kind === 'plain') return Number.POSITIVE_INFINITY;
  }
  const step = Math.log(pullN(question, at - 1, last) / pullN(question, at, next));
  return question.weights.step * (step - Math.log(left.targetTensionN / right.targetTensionN)) ** 2;
}
