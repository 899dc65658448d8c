import { findRoot } from '../../numeric/index.js';
import { normalBelow } from '../distributions/normal.js';
import type { RunRule } from './run-rules.js';

/** Rules that look only at which zone a point lies in. */
export type ZoneRule = Exclude<RunRule, { kind: 'trend' | 'alternating' }>;

/**
 * Mean number of points until the first signal of any of the rules, the mean `shift` sigmas off: exact, by a Markov
 * chain whose states are what the rules remember (C. Champ & W. Woodall, Technometrics 29 (1987) 393), solved by
 * L = 1 + Q L. Relative error below 1e-8.
 */
export function rulesRunLength(rules: readonly ZoneRule[], shift: number): number {
  const zones = zonesOf(rules);
  const chances = zones.map(({ low, high }) => normalBelow(high - shift) - normalBelow(low - shift));
  const moves = explored(rules, zones);
  return solved(moves, chances);
}

/**
 * The width of the outermost rule at which false alarms of the whole set lie so many points apart; undefined where the
 * other rules alone alarm more often.
 */
export function outerWidthFor(runLength: number, others: readonly ZoneRule[]): number | undefined {
  return findRoot({
    f: (sigmas) =>
      Math.log(rulesRunLength([{ kind: 'beyond', need: 1, of: 1, sigmas }, ...others], 0) / runLength),
    low: 2,
    high: 6,
    tolerance: 1e-6,
  });
}

interface Zone {
  readonly low: number;
  readonly high: number;
  readonly middle: number;
}

/** The line cut at every boundary that some rule looks at. */
function zonesOf(rules: readonly ZoneRule[]): readonly Zone[] {
  const cuts = [...new Set([0, ...rules.flatMap(({ sigmas }) => [sigmas, -sigmas])])].sort((a, b) => a - b);
  const ends = [Number.NEGATIVE_INFINITY, ...cuts.map((cut) => cut + 0), Number.POSITIVE_INFINITY];
  return ends.slice(1).flatMap((high, index) => {
    const low = ends[index]!;
    const middle =
      low === Number.NEGATIVE_INFINITY
        ? high - 1
        : high === Number.POSITIVE_INFINITY
          ? low + 1
          : (low + high) / 2;
    return high > low ? [{ low, high, middle }] : [];
  });
}

/** For each state the state that each zone leads to; -1 for a signal. */
function explored(rules: readonly ZoneRule[], zones: readonly Zone[]): readonly (readonly number[])[] {
  const watches = rules.flatMap(watchesOf);
  const known = new Map<string, number>();
  const states: (readonly number[])[] = [];
  const numberOf = (state: readonly number[]): number => {
    const name = state.join();
    const number = known.get(name) ?? states.length;
    if (number === states.length) {
      known.set(name, number);
      states.push(state);
    }
    return number;
  };
  numberOf(watches.map(() => 0));
  const moves: (readonly number[])[] = [];
  for (let at = 0; at < states.length; at++) {
    const state = states[at]!;
    moves.push(
      zones.map(({ middle }) => {
        const next = watches.map((watch, index) => watch(state[index]!, middle));
        return next.includes(SIGNAL) ? -1 : numberOf(next);
      }),
    );
  }
  return moves;
}

const SIGNAL = -1;

/** What one rule remembers of one side, and how a point changes it: bits of the last points, newest lowest. */
type Watch = (memory: number, z: number) => number;

function watchesOf(rule: ZoneRule): readonly Watch[] {
  switch (rule.kind) {
    case 'beyond':
      return [1, -1].map((side) => watch((z) => side * z > rule.sigmas, rule.need, rule.of));
    case 'hugging':
      return [watch((z) => Math.abs(z) < rule.sigmas, rule.length, rule.length)];
    case 'avoiding':
      return [watch((z) => Math.abs(z) > rule.sigmas, rule.length, rule.length)];
  }
}

function watch(counts: (z: number) => boolean, need: number, of: number): Watch {
  // A run of all is remembered by its length alone.
  if (need === of) return (length, z) => (counts(z) ? (length + 1 >= need ? SIGNAL : length + 1) : 0);
  const kept = 2 ** (of - 1) - 1;
  return (bits, z) => {
    const next = bits * 2 + Number(counts(z));
    return counts(z) && onesIn(next) >= need ? SIGNAL : next & kept;
  };
}

const onesIn = (bits: number): number => bits.toString(2).replaceAll('0', '').length;

const NEARNESS = 1e-12;

/** L = 1 + Q L, each sweep taking what it has just found (Gauss-Seidel). */
function solved(moves: readonly (readonly number[])[], chances: readonly number[]): number {
  const lengths = new Float64Array(moves.length);
  for (let sweep = 0; sweep < 1_000_000; sweep++) {
    let change = 0;
    for (let at = moves.length - 1; at >= 0; at--) {
      let length = 1;
      moves[at]!.forEach((next, zone) => {
        if (next >= 0) length += chances[zone]! * lengths[next]!;
      });
      change = Math.max(change, Math.abs(length - lengths[at]!) / length);
      lengths[at] = length;
    }
    if (change < NEARNESS) break;
  }
  return lengths[0]!;
}
