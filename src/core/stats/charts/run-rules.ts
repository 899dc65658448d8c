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

function endsAt(z: readonly number[], at: number, rule: RunRule): boolean {
  const last = (count: number): readonly number[] | undefined =>
    at + 1 < count ? undefined : z.slice(at + 1 - count, at + 1);
  switch (rule.kind) {
    case 'beyond': {
      const window = z.slice(Math.max(0, at + 1 - rule.of), at + 1);
      return [1, -1].some(
        (side) =>
          side * z[at]! > rule.sigmas && window.filter((x) => side * x > rule.sigmas).length >= rule.need,
      );
    }
    case 'trend': {
      const steps = stepsOf(last(rule.length));
      return steps !== undefined && (steps.every((step) => step > 0) || steps.every((step) => step < 0));
    }
    case 'alternating': {
      const steps = stepsOf(last(rule.length));
      return steps?.every((step, index) => step !== 0 && step === -(steps[index - 1] ?? -step)) ?? false;
    }
    case 'hugging':
      return last(rule.length)?.every((x) => Math.abs(x) < rule.sigmas) ?? false;
    case 'avoiding':
      return last(rule.length)?.every((x) => Math.abs(x) > rule.sigmas) ?? false;
  }
}

const stepsOf = (points: readonly number[] | undefined): readonly number[] | undefined =>
  points?.slice(1).map((point, index) => Math.sign(point - points[index]!));
