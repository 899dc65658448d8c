import { spanWoundTo, whirlHz } from './whirl.js';

/**
 * How near the turning core comes to whirling. While the winding runs, the free span grows heavier and its
 * whirl speed falls; the spindle is kept below it by `keepOutShare` all the way.
 */
export interface WhirlCheck {
  /** Layer it speaks of, counted from 0 at the core. */
  readonly layer: number;
  readonly spindleRpm: number;
  readonly freeSpanM: number;
  /** Where along the wound length whirl comes nearest to the spindle, from the start: the span is heaviest there. */
  readonly nearestAtM: number;
  /** Share of the whirl speed that is to stay free between it and the spindle. */
  readonly keepOutShare: number;
  /** Least core tension at which this spindle speed stays clear of whirl by that share. Needs no record. */
  readonly leastCoreTensionN: number;
  /** The same with a damper in the middle of the free span. */
  readonly leastCoreTensionDampedN: number;
  /**
   * Core tension at which the speeds below are reckoned: the record's, or where there is none the most that
   * strength allows, or where that is unknown too the least that keeps clear.
   */
  readonly assumedTensionN: number;
  readonly assumed: AssumedTension;
  /** Whirl of the bare span at that tension, where the winding begins, and at its lowest. */
  readonly bareRpm: number;
  readonly lowestRpm: number;
  /** (lowestRpm - spindleRpm) / lowestRpm. */
  readonly marginShare: number;
}

export type AssumedTension = 'record' | 'strength-bound' | 'least-needed';

/** A layer as whirl sees it: what weighs on the free span before it is wound and after. */
export interface WhirlingSpan {
  readonly freeSpanM: number;
  readonly woundLengthM: number;
  readonly bareKgPerM: number;
  readonly woundKgPerM: number;
  readonly keepOutShare: number;
}

/**
 * Fastest spindle speed, turns per minute, that stays below whirl by the share kept out, at a core tension.
 * n = 60 (1 - share) f, f the whirl of the span at its heaviest (see `whirlHz`).
 */
export const fastestClearRpm = (span: WhirlingSpan, tensionN: number): number =>
  60 * (1 - span.keepOutShare) * heaviestWhirlHz(span, tensionN);

/** The check of one layer at the spindle speed chosen for it. */
export function whirlCheck(
  span: WhirlingSpan,
  run: {
    readonly layer: number;
    readonly spindleRpm: number;
    readonly tension?: { readonly valueN: number; readonly assumed: Exclude<AssumedTension, 'least-needed'> };
  },
): WhirlCheck {
  const leastCoreTensionN = leastTensionN(span, run.spindleRpm);
  const assumedTensionN = run.tension?.valueN ?? leastCoreTensionN;
  const lowestRpm = 60 * heaviestWhirlHz(span, assumedTensionN);
  return {
    layer: run.layer,
    spindleRpm: run.spindleRpm,
    freeSpanM: span.freeSpanM,
    nearestAtM: Math.min(span.woundLengthM, span.freeSpanM),
    keepOutShare: span.keepOutShare,
    leastCoreTensionN,
    leastCoreTensionDampedN: leastTensionN(span, run.spindleRpm, span.freeSpanM / 2),
    assumedTensionN,
    assumed: run.tension?.assumed ?? 'least-needed',
    bareRpm: 60 * whirlHz({ segments: spanWoundTo({ ...span, frontM: 0 }), tensionN: assumedTensionN }),
    lowestRpm,
    marginShare: (lowestRpm - run.spindleRpm) / lowestRpm,
  };
}

/** Whirl goes with the root of tension, so the least tension is (speed needed / speed at 1 N) squared. */
function leastTensionN(span: WhirlingSpan, spindleRpm: number, damperAtM?: number): number {
  const neededHz = spindleRpm / 60 / (1 - span.keepOutShare);
  return (neededHz / heaviestWhirlHz(span, 1, damperAtM)) ** 2;
}

/** Every turn laid on adds mass and takes none away, so the span whirls lowest when all of it is wound. */
function heaviestWhirlHz(span: WhirlingSpan, tensionN: number, damperAtM?: number): number {
  const segments = spanWoundTo({ ...span, frontM: span.woundLengthM });
  return whirlHz({ segments, tensionN, ...(damperAtM !== undefined && { damperAtM }) });
}
