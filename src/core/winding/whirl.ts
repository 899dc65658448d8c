import { invariant } from '../foundation/index.js';
import { findRoot } from '../numeric/index.js';

/** A stretch of core, bare or wound, of even weight. */
export interface SpanSegment {
  readonly lengthM: number;
  readonly linearDensityKgPerM: number;
}

/**
 * Lowest speed at which a taut core whirls between its supports, in turns per second.
 *
 * A turning string whirls at its transverse natural frequency. For an even span that is
 * f = (1/2l) sqrt(T/mu); for a span that is part bare and part wound it is the lowest omega at which
 * T y'' + omega^2 mu(x) y = 0 with y = 0 at both supports, found here by carrying the phase of the
 * motion (Pruefer's angle, which grows steadily with omega) from one support to the other until it is pi.
 * The core's own bending stiffness is left out: it would raise the frequency a little.
 *
 * Dampers at `dampersAtM` from the first support hold the core still there and so split the span; the
 * part that whirls lowest counts.
 *
 * Source: P. M. Morse, Vibration and Sound, 1948, ch. III (string of uneven density); the phase form is
 * H. Pruefer, Mathematische Annalen 95 (1926) 499-518. Both named from memory.
 */
export function whirlHz(span: {
  readonly segments: readonly SpanSegment[];
  readonly tensionN: number;
  readonly dampersAtM?: readonly number[];
}): number {
  invariant(span.tensionN > 0, 'a span whirls only under tension');
  const parts = partsOfSpan(span.segments, span.dampersAtM);
  invariant(parts.length > 0, 'a span has a length');
  return Math.min(...parts.map((segments) => undampedWhirlHz(segments, span.tensionN)));
}

/**
 * The free span while the front of the winding stands at `frontM` from where it began: bare, wound, bare.
 * Where the wound length is shorter than the span it is taken to lie in the middle, which whirls lowest.
 */
export function spanWoundTo(span: {
  readonly freeSpanM: number;
  readonly woundLengthM: number;
  readonly frontM: number;
  readonly bareKgPerM: number;
  readonly woundKgPerM: number;
}): readonly SpanSegment[] {
  const leadInM = Math.max(0, (span.freeSpanM - span.woundLengthM) / 2);
  const woundM = Math.max(0, Math.min(span.frontM, span.woundLengthM, span.freeSpanM));
  return [
    { lengthM: leadInM, linearDensityKgPerM: span.bareKgPerM },
    { lengthM: woundM, linearDensityKgPerM: span.woundKgPerM },
    { lengthM: span.freeSpanM - leadInM - woundM, linearDensityKgPerM: span.bareKgPerM },
  ].filter(({ lengthM }) => lengthM > 0);
}

function undampedWhirlHz(segments: readonly SpanSegment[], tensionN: number): number {
  const lengthM = segments.reduce((sum, segment) => sum + segment.lengthM, 0);
  const densities = segments.map(({ linearDensityKgPerM }) => linearDensityKgPerM);
  const evenRadPerS = (kgPerM: number) => (Math.PI / lengthM) * Math.sqrt(tensionN / kgPerM);
  const slowest = evenRadPerS(Math.max(...densities));
  const fastest = evenRadPerS(Math.min(...densities));
  if (fastest - slowest <= slowest * EVEN) return slowest / (2 * Math.PI);
  const root = findRoot({
    f: (radPerS) => phaseAtFarSupport(segments, tensionN, radPerS) - Math.PI,
    low: slowest * (1 - EVEN),
    high: fastest * (1 + EVEN),
    tolerance: 0,
  });
  invariant(root !== undefined, 'an uneven span whirls between its lightest and its heaviest even one');
  return root / (2 * Math.PI);
}

/** Differences below this share are rounding: such a span is even. */
const EVEN = 1e-12;

function phaseAtFarSupport(segments: readonly SpanSegment[], tensionN: number, radPerS: number): number {
  let phase = 0;
  let waveNumber: number | undefined;
  for (const { lengthM, linearDensityKgPerM } of segments) {
    const here = radPerS * Math.sqrt(linearDensityKgPerM / tensionN);
    if (waveNumber !== undefined) phase = acrossJoint(phase, here / waveNumber);
    phase += here * lengthM;
    waveNumber = here;
  }
  return phase;
}

/** Displacement and slope are the same on both sides of a joint, so tan(phase) scales with the wave number. */
function acrossJoint(phase: number, ratio: number): number {
  const halfTurns = Math.round(phase / Math.PI) * Math.PI;
  return halfTurns + Math.atan(ratio * Math.tan(phase - halfTurns));
}

/** What lies between supports and dampers, one part after the other, each of its own stretches of core. */
export function partsOfSpan(
  segments: readonly SpanSegment[],
  dampersAtM: readonly number[] = [],
): readonly (readonly SpanSegment[])[] {
  const lengthM = segments.reduce((sum, segment) => sum + segment.lengthM, 0);
  const ends = [...dampersAtM.filter((atM) => atM > 0 && atM < lengthM).toSorted((a, b) => a - b), lengthM];
  return ends.map((endM, at) => between(segments, ends[at - 1] ?? 0, endM)).filter((part) => part.length > 0);
}

function between(segments: readonly SpanSegment[], fromM: number, toM: number): readonly SpanSegment[] {
  let startM = 0;
  return segments.flatMap(({ lengthM, linearDensityKgPerM }) => {
    const insideM = Math.min(toM, startM + lengthM) - Math.max(fromM, startM);
    startM += lengthM;
    return insideM > 0 ? [{ lengthM: insideM, linearDensityKgPerM }] : [];
  });
}
