import { partsOfSpan, spanWoundTo, whirlHz } from './whirl.js';

/**
 * How near the turning core comes to whirling. While the winding runs, the free span grows heavier and its
 * whirl speed falls; the spindle is kept below it by `keepOutShare` all the way.
 */
export interface WhirlCheck {
  /** Layer it speaks of, counted from 0 at the core. */
  readonly layer: number;
  readonly spindleRpm: number;
  readonly freeSpanM: number;
  /** Where dampers stand in it, from the head's support. */
  readonly dampersAtM: readonly number[];
  /**
   * Where along the wound length whirl first comes nearest to the spindle, from the start: there the part of the span that
   * whirls lowest is wound through.
   */
  readonly nearestAtM: number;
  /** Share of the whirl speed that is to stay free between it and the spindle. */
  readonly keepOutShare: number;
  /** Least core tension at which this spindle speed stays clear of whirl by that share. Needs no record. */
  readonly leastCoreTensionN: number;
  /** Where one damper more does most, from the head's support, and the same with it. */
  readonly damperBestAtM: number;
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
  readonly dampersAtM: readonly number[];
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
  const damperBestAtM = bestDamperM(span);
  return {
    layer: run.layer,
    spindleRpm: run.spindleRpm,
    freeSpanM: span.freeSpanM,
    dampersAtM: span.dampersAtM,
    nearestAtM: lowestFromM(span),
    keepOutShare: span.keepOutShare,
    leastCoreTensionN,
    damperBestAtM,
    leastCoreTensionDampedN: leastTensionN(withDamper(span, damperBestAtM), run.spindleRpm),
    assumedTensionN,
    assumed: run.tension?.assumed ?? 'least-needed',
    bareRpm: 60 * whirlAtFrontHz(span, 0, assumedTensionN),
    lowestRpm,
    marginShare: (lowestRpm - run.spindleRpm) / lowestRpm,
  };
}

/** Whirl goes with the root of tension, so the least tension is (speed needed / speed at 1 N) squared. */
function leastTensionN(span: WhirlingSpan, spindleRpm: number): number {
  const neededHz = spindleRpm / 60 / (1 - span.keepOutShare);
  return (neededHz / heaviestWhirlHz(span, 1)) ** 2;
}

/** Every turn laid on adds mass and takes none away, so the span whirls lowest when all of it is wound. */
const heaviestWhirlHz = (span: WhirlingSpan, tensionN: number): number =>
  whirlAtFrontHz(span, span.woundLengthM, tensionN);

const whirlAtFrontHz = (span: WhirlingSpan, frontM: number, tensionN: number): number =>
  whirlHz({ segments: spanWoundTo({ ...span, frontM }), tensionN, dampersAtM: span.dampersAtM });

/** The front of the winding from which on the span whirls no lower: it has reached the end of the part that whirls lowest. */
function lowestFromM(span: WhirlingSpan): number {
  const parts = partsOfSpan(spanWoundTo({ ...span, frontM: span.woundLengthM }), span.dampersAtM);
  const hz = parts.map((segments) => whirlHz({ segments, tensionN: 1 }));
  const lowest = Math.min(...hz) * (1 + ALIKE);
  const first = hz.findIndex((each) => each <= lowest);
  const endM = parts
    .slice(0, first + 1)
    .flat()
    .reduce((sum, { lengthM }) => sum + lengthM, 0);
  const leadInM = Math.max(0, (span.freeSpanM - span.woundLengthM) / 2);
  return Math.min(span.woundLengthM, span.freeSpanM, endM - leadInM);
}

/** Parts that differ by less whirl alike. */
const ALIKE = 1e-9;

/** Places that are tried for one damper more. */
const DAMPER_PLACES = 80;

/** Where one damper more raises the whirl of the wound span most; of places that do the same, the middle one. */
function bestDamperM(span: WhirlingSpan): number {
  const tried = Array.from({ length: DAMPER_PLACES - 1 }, (_, at) => {
    const atM = ((at + 1) * span.freeSpanM) / DAMPER_PLACES;
    return { atM, hz: heaviestWhirlHz(withDamper(span, atM), 1) };
  });
  const most = Math.max(...tried.map(({ hz }) => hz)) * (1 - ALIKE);
  const best = tried.filter(({ hz }) => hz >= most);
  return best[Math.floor((best.length - 1) / 2)]!.atM;
}

const withDamper = (span: WhirlingSpan, atM: number): WhirlingSpan => ({
  ...span,
  dampersAtM: [...span.dampersAtM, atM],
});
