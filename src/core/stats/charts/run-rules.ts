/** A pattern that hardly comes by chance, in terms of z = (reading - centre) / sigma. */
export type RunRule =
  /** Of the last `of` points `need` beyond so many sigmas, all to one side, the newest among them. */
  | { readonly kind: 'beyond'; readonly need: number; readonly of: number; readonly sigmas: number }
  /** So many points in a row, each higher than the one before, or each lower. */
  | { readonly kind: 'trend'; readonly length: number }
  /** So many points in a row, up and down by turns. */
  | { readonly kind: 'alternating'; readonly length: number }
  /** So many points in a row within so many sigmas: limits are too wide, or groups hold two processes. */
  | { readonly kind: 'hugging'; readonly length: number; readonly sigmas: number }
  /** So many points in a row outside so many sigmas, to either side: two processes by turns. */
  | { readonly kind: 'avoiding'; readonly length: number; readonly sigmas: number };

/** The eight tests of L. Nelson, J. Quality Technology 16 (1984) 237, by their number less one. */
export const NELSON_RULES = [
  { kind: 'beyond', need: 1, of: 1, sigmas: 3 },
  { kind: 'beyond', need: 9, of: 9, sigmas: 0 },
  { kind: 'trend', length: 6 },
  { kind: 'alternating', length: 14 },
  { kind: 'beyond', need: 2, of: 3, sigmas: 2 },
  { kind: 'beyond', need: 4, of: 5, sigmas: 1 },
  { kind: 'hugging', length: 15, sigmas: 1 },
  { kind: 'avoiding', length: 8, sigmas: 1 },
] as const satisfies readonly RunRule[];

/** The four of Western Electric, Statistical quality control handbook (1956): eight in a row where Nelson has nine. */
export const WESTERN_ELECTRIC_RULES = [
  { kind: 'beyond', need: 1, of: 1, sigmas: 3 },
  { kind: 'beyond', need: 2, of: 3, sigmas: 2 },
  { kind: 'beyond', need: 4, of: 5, sigmas: 1 },
  { kind: 'beyond', need: 8, of: 8, sigmas: 0 },
] as const satisfies readonly RunRule[];

/** Places, from 0, of the last points of every pattern. A point on the centre belongs to neither side. */
export function patternEnds(z: readonly number[], rule: RunRule): readonly number[] {
  return z.flatMap((_, at) => (endsAt(z, at, rule) ? [at] : []));
}

/**
 * Where the pattern that ends at this place begins: the first of its points, for a run or a trend as far back as it holds.
 */
export function patternBegins(z: readonly number[], end: number, rule: RunRule): number {
  if (rule.kind === 'beyond' && rule.need < rule.of) {
    const side = Math.sign(z[end]!);
    const from = Math.max(0, end + 1 - rule.of);
    return from + z.slice(from, end + 1).findIndex((x) => side * x > rule.sigmas);
  }
  const length = rule.kind === 'beyond' ? rule.of : rule.length;
  const longer = (more: number): RunRule =>
    rule.kind === 'beyond'
      ? { ...rule, need: length + more, of: length + more }
      : { ...rule, length: length + more };
  let more = 0;
  while (endsAt(z, end, longer(more + 1))) more += 1;
  return end + 1 - length - more;
}

function endsAt(z: readonly number[], at: number, rule: RunRule): boolean {
  switch (rule.kind) {
    case 'beyond': {
      const side = Math.sign(z[at]!);
      const beyond = (x: number): boolean => side * x > rule.sigmas;
      return beyond(z[at]!) && countBack(z, at, rule.of, beyond) >= rule.need;
    }
    case 'trend': {
      const way = stepTo(z, at);
      return way !== 0 && heldBack(at, rule.length - 1, (place) => stepTo(z, place) === way);
    }
    case 'alternating':
      return (
        stepTo(z, at - rule.length + 2) !== 0 &&
        heldBack(at, rule.length - 2, (place) => stepTo(z, place) === -stepTo(z, place - 1))
      );
    case 'hugging':
      return heldBack(at, rule.length, (place) => Math.abs(z[place]!) < rule.sigmas);
    case 'avoiding':
      return heldBack(at, rule.length, (place) => Math.abs(z[place]!) > rule.sigmas);
  }
}

/** Which way the point at a place lies from the one before: 1 up, -1 down, 0 level or none before. */
const stepTo = (z: readonly number[], place: number): number =>
  place < 1 ? 0 : Math.sign(z[place]! - z[place - 1]!);

/** Whether something holds at this place and the ones before it, so many in all; not where there are fewer. */
function heldBack(at: number, count: number, holds: (place: number) => boolean): boolean {
  if (at + 1 < count) return false;
  for (let place = at; place > at - count; place--) if (!holds(place)) return false;
  return true;
}

/** Of the last so many points, as far as there are, those of which it holds. */
function countBack(z: readonly number[], at: number, of: number, holds: (x: number) => boolean): number {
  let count = 0;
  for (let place = at; place >= 0 && place > at - of; place--) if (holds(z[place]!)) count += 1;
  return count;
}
