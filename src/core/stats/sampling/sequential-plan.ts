/** Lines between which looking goes on: accept at or below `size slope - accept`, refuse at or above `+ refuse`. */
export interface SequentialPlan {
  readonly slope: number;
  readonly accept: number;
  readonly refuse: number;
}

export interface SequentialWanted {
  readonly good: { readonly share: number; readonly refusedAtMost: number };
  readonly poor: { readonly share: number; readonly acceptedAtMost: number };
}

/**
 * One string after the other until the answer is clear: k = ln p2(1-p1)/p1(1-p2), slope = ln (1-p1)/(1-p2) / k, accept =
 * ln (1-a)/b / k, refuse = ln (1-b)/a / k (A. Wald, Sequential analysis, 1947, ch. 5).
 */
export function sequentialPlan({ good, poor }: SequentialWanted): SequentialPlan {
  const k = Math.log((poor.share * (1 - good.share)) / (good.share * (1 - poor.share)));
  return {
    slope: Math.log((1 - good.share) / (1 - poor.share)) / k,
    accept: Math.log((1 - good.refusedAtMost) / poor.acceptedAtMost) / k,
    refuse: Math.log((1 - poor.acceptedAtMost) / good.refusedAtMost) / k,
  };
}

export type SequentialAnswer = 'accept' | 'refuse' | 'go-on';

/** What to do after so many strings of which so many were bad. */
export function sequentialAnswer(plan: SequentialPlan, looked: number, bad: number): SequentialAnswer {
  const line = plan.slope * looked;
  if (bad <= line - plan.accept) return 'accept';
  return bad >= line + plan.refuse ? 'refuse' : 'go-on';
}

export interface SequentialCourse {
  readonly accepted: number;
  readonly refused: number;
  /** Still open after the last string. */
  readonly open: number;
  readonly meanLooked: number;
}

/** How it goes with this share of bad strings, exactly, string by string up to `most`; Wald's own formulas are near. */
export function sequentialCourse(plan: SequentialPlan, share: number, most: number): SequentialCourse {
  let open = new Map([[0, 1]]);
  let [accepted, refused, meanLooked] = [0, 0, 0];
  for (let looked = 1; looked <= most && open.size > 0; looked++) {
    const next = new Map<number, number>();
    for (const [before, chance] of open) {
      meanLooked += chance;
      for (const [bad, part] of [
        [before, chance * (1 - share)],
        [before + 1, chance * share],
      ] as const) {
        const answer = sequentialAnswer(plan, looked, bad);
        if (answer === 'accept') accepted += part;
        else if (answer === 'refuse') refused += part;
        else next.set(bad, (next.get(bad) ?? 0) + part);
      }
    }
    open = next;
  }
  return { accepted, refused, open: [...open.values()].reduce((sum, part) => sum + part, 0), meanLooked };
}
