/** A check that strings pass through. */
export interface Check {
  /** Share of the bad strings it looks at that it finds. */
  readonly detection: number;
  /** Share of the strings that it looks at: 1 for all, less for a sample. */
  readonly looksAt: number;
  /** Share of good strings that it throws out with the bad ones. */
  readonly goodRefused: number;
  /** Cost of looking at one string. */
  readonly look: number;
}

export interface CheckedStrings {
  readonly strings: number;
  readonly badShare: number;
  /** Cost of a string scrapped, and of a bad one that reaches a player; the same currency and unit as `look`. */
  readonly scrap: number;
  readonly escape: number;
}

export interface ChecksOutcome {
  /** Bad strings that pass all checks. */
  readonly escapes: number;
  readonly goodScrapped: number;
  readonly looks: number;
  /** Looking, good strings scrapped, and escapes; bad ones found are scrap under any arrangement. */
  readonly cost: number;
}

/**
 * What checks in a row let through and cost on average, each finding by itself: bad ones left are multiplied by 1 -
 * looksAt detection at every check. Where the same faults are hard for all checks more escape than this says.
 */
export function checksOutcome(checks: readonly Check[], lot: CheckedStrings): ChecksOutcome {
  let bad = lot.strings * lot.badShare;
  let good = lot.strings - bad;
  let [looks, cost, goodScrapped] = [0, 0, 0];
  for (const { detection, looksAt, goodRefused, look } of checks) {
    const looked = looksAt * (bad + good);
    const refused = looksAt * goodRefused * good;
    looks += looked;
    cost += looked * look + refused * lot.scrap;
    goodScrapped += refused;
    good -= refused;
    bad *= 1 - looksAt * detection;
  }
  return { escapes: bad, goodScrapped, looks, cost: cost + bad * lot.escape };
}

/** What one check more would change: fewer escapes, and what is spent (or, below nought, saved) for them. */
export function addedCheck(
  checks: readonly Check[],
  added: Check,
  lot: CheckedStrings,
): { readonly escapesSpared: number; readonly addedCost: number } {
  const [before, after] = [checksOutcome(checks, lot), checksOutcome([...checks, added], lot)];
  return { escapesSpared: before.escapes - after.escapes, addedCost: after.cost - before.cost };
}
