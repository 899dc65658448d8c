import { invariant } from '../foundation/index.js';

/** One place of the chain and what may stand there. Costs are whole ticks >= 0, so that sums are exact in any order. */
export interface ChainLink {
  /** Cost of each choice by itself. */
  readonly ticks: Float64Array;
  /**
   * What each choice looks like from outside. Choices that look alike stand next to each other, and of two
   * chains that look alike in every place only the cheaper is worth showing.
   */
  readonly looks: Int32Array;
}

export type Joint = (left: number, right: number) => number;

export interface ChainProblem {
  readonly links: readonly ChainLink[];
  /** Between each place and the next: cost of `left` in one beside `right` in the other, whole ticks >= 0; Infinity where that may not be. */
  readonly joints: readonly Joint[];
}

export interface Chain {
  /** Which choice stands in each place. */
  readonly choices: readonly number[];
  readonly ticks: number;
}

/**
 * The `count` cheapest chains of different looks, cheapest first, exactly; fewer where there are not so many,
 * none where no chain is allowed. Equal costs stand in the order of their looks, first place first, so the
 * answer is the same every time.
 *
 * Backwards over the places, the exact cost to go from each choice is found (R. Bellman, Dynamic
 * Programming, 1957; the Viterbi recursion). Forwards, beginnings of chains are unfolded best first: since a
 * beginning's cost so far plus its exact cost to go is the cost of the best chain that starts so, the k-th chain finished
 * is the k-th best. A beginning keeps the costs of all choices that look like it, so chains that look alike
 * are one. Open beginnings share no chain, hence no more need be kept open than chains are still wanted.
 */
export function bestChains(problem: ChainProblem, count: number): Chain[] {
  invariant(problem.links.length > 0, 'a chain has at least one place');
  const toGo = costsToGo(problem);
  const found: Chain[] = [];
  let open = unfold(problem, toGo, undefined, [], count);
  while (open.length > 0 && found.length < count) {
    const best = open.shift()!;
    if (best.at === problem.links.length - 1) found.push(finished(problem, best));
    else open = unfold(problem, toGo, best, open, count - found.length);
  }
  return found;
}

/** Cheapest way from each choice of each place to the end, its own cost left out. */
function costsToGo({ links, joints }: ChainProblem): Float64Array[] {
  const toGo = links.map((link) => new Float64Array(link.ticks.length));
  for (let at = links.length - 2; at >= 0; at--) {
    const next = links[at + 1]!.ticks.map((ticks, choice) => ticks + toGo[at + 1]![choice]!);
    // Cheapest first: once a next choice alone costs as much as the best way known, none after it can do better.
    const order = new Uint32Array(next.length).map((_, index) => index).sort((a, b) => next[a]! - next[b]!);
    const here = toGo[at]!;
    const joint = joints[at]!;
    for (let left = 0; left < here.length; left++) {
      let best = Number.POSITIVE_INFINITY;
      for (let rank = 0; rank < order.length; rank++) {
        const right = order[rank]!;
        const alone = next[right]!;
        if (alone >= best) break;
        const ticks = alone + joint(left, right);
        if (ticks < best) best = ticks;
      }
      here[left] = best;
    }
  }
  return toGo;
}

/** The beginning of a chain up to place `at`, by its looks. */
interface Beginning {
  readonly at: number;
  /** Looks of all places so far. */
  readonly looks: readonly number[];
  /** First choice of place `at` with its look; the others follow. */
  readonly first: number;
  /** Least cost so far of each choice with that look, and which choice before it gave it. */
  readonly ticks: readonly number[];
  readonly cameFrom: readonly number[];
  readonly before: Beginning | undefined;
  /** Cost of the best chain that begins so. */
  readonly total: number;
}

/** Every look that may follow `before` (or begin, where there is none), put in order among those open, at most `most` kept. */
function unfold(
  problem: ChainProblem,
  toGo: readonly Float64Array[],
  before: Beginning | undefined,
  open: Beginning[],
  most: number,
): Beginning[] {
  const at = before ? before.at + 1 : 0;
  const { ticks: own, looks } = problem.links[at]!;
  const cheapestSoFar = before ? Math.min(...before.ticks) : 0;
  for (let first = 0, end = 0; first < own.length; first = end) {
    const ticks: number[] = [];
    const cameFrom: number[] = [];
    let total = Number.POSITIVE_INFINITY;
    const worst = open.length < most ? Number.POSITIVE_INFINITY : open.at(-1)!.total;
    for (end = first; end < own.length && looks[end] === looks[first]; end++) {
      const ahead = own[end]! + toGo[at]![end]!;
      const reached = cheapestSoFar + ahead > worst ? UNREACHED : reach(problem, before, end);
      ticks.push(reached.ticks + own[end]!);
      cameFrom.push(reached.from);
      total = Math.min(total, reached.ticks + ahead);
    }
    if (total === Number.POSITIVE_INFINITY || total > worst) continue;
    insert(open, {
      at,
      looks: [...(before?.looks ?? []), looks[first]!],
      first,
      ticks,
      cameFrom,
      before,
      total,
    });
    if (open.length > most) open.pop();
  }
  return open;
}

const UNREACHED = { ticks: Number.POSITIVE_INFINITY, from: -1 };

/** Cheapest way to a choice from those of the beginning, the earliest where several cost the same. */
function reach(problem: ChainProblem, before: Beginning | undefined, choice: number) {
  if (!before) return { ticks: 0, from: -1 };
  let ticks = Number.POSITIVE_INFINITY;
  let from = -1;
  for (let index = 0; index < before.ticks.length; index++) {
    const left = before.first + index;
    const through = before.ticks[index]! + problem.joints[before.at]!(left, choice);
    if (through < ticks) {
      ticks = through;
      from = left;
    }
  }
  return { ticks, from };
}

function insert(open: Beginning[], beginning: Beginning): void {
  let place = open.length;
  while (place > 0 && precedes(beginning, open[place - 1]!)) place--;
  open.splice(place, 0, beginning);
}

/** Of two beginnings neither of which begins the other, whether `a` stands first. */
function precedes(a: Beginning, b: Beginning): boolean {
  if (a.total !== b.total) return a.total < b.total;
  const differ = a.looks.findIndex((look, place) => look !== b.looks[place]);
  return a.looks[differ]! < b.looks[differ]!;
}

/** Of the choices with the last look the cheapest, and back along the way that reached it. */
function finished(problem: ChainProblem, last: Beginning): Chain {
  const choices = new Array<number>(problem.links.length);
  let choice = last.first + last.ticks.indexOf(last.total);
  for (let here: Beginning | undefined = last; here; here = here.before) {
    choices[here.at] = choice;
    choice = here.cameFrom[choice - here.first]!;
  }
  return { choices, ticks: last.total };
}
