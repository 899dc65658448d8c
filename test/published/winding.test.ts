import { describe, expect, it } from 'vitest';
import { tensileStrength } from '../../src/core/materials/index.js';
import { type CoreWire, stringBody, type WoundConstruction } from '../../src/core/string/index.js';
import {
  pulledWire,
  type SpanSegment,
  STARTING_PRACTICE,
  spanWoundTo,
  stringWork,
  tailSpeedMPerS,
  whirlHz,
} from '../../src/core/winding/index.js';
import { bronze36, SERVO, UNFLATTENED } from '../fixtures/winders.js';

const INCH_M = 0.0254;
const PSI_PA = 6894.757;

/** Relative difference. */
const off = (found: number, expected: number): number => Math.abs(found / expected - 1);

describe('Helix geometry: sin(alpha) = w / (pi D_m) for touching turns, worked by hand', () => {
  const touching = (shape: CoreWire['shape']) => {
    const construction = bronze36(shape).construction as WoundConstruction;
    const body = stringBody(construction, UNFLATTENED);
    if (!body.ok) throw new Error(body.fault.code);
    return { body: body.value, layer: body.value.layers[0]! };
  };

  it('0.016 round, 0.010 phosphor bronze: 8.168141 m of wrap a metre, 4.685308 g/m, 7.0322 degrees, 0.2559252 mm', () => {
    const { body, layer } = touching('round');
    expect(off(layer.wireLengthPerLength, 8.168141)).toBeLessThan(1e-6);
    expect(off(body.linearDensityKgPerM, 4.685308e-3)).toBeLessThan(1e-5);
    expect(off((layer.leadAngleRad * 180) / Math.PI, 7.0322)).toBeLessThan(1e-5);
    expect(off(layer.wrapPitchM, 0.2559252e-3)).toBeLessThan(1e-6);
    expect(off(INCH_M / layer.wrapPitchM, 99.25)).toBeLessThan(1e-4);
  });

  it('the same on 0.016 hexagon: D_m 0.027643 in, 8.6842 m a metre, 6.612 degrees, 6.3 % more wrap', () => {
    const { layer } = touching('hex');
    expect(off(layer.windingDiameterM, 0.027643 * INCH_M)).toBeLessThan(2e-5);
    expect(off(layer.wireLengthPerLength, 8.6842)).toBeLessThan(1e-5);
    expect(off((layer.leadAngleRad * 180) / Math.PI, 6.612)).toBeLessThan(1e-4);
    const more = layer.wireLengthPerLength / touching('round').layer.wireLengthPerLength - 1;
    expect(more).toBeCloseTo(0.063, 3);
  });

  it('at 3000 turns a minute: traverse 12.7963 mm/s, wire 6.27130 m/min, 900 mm in 70.333 s and 3517 turns', () => {
    const work = stringWork({
      // A step fine enough to leave the pitch alone: what is checked is the geometry.
      machine: { ...SERVO, pitchStepM: 1e-10, wireSpeedLimitMPerS: 10 },
      recipe: bronze36('round'),
      lengthM: 0.9,
      seat: UNFLATTENED,
      practice: { ...STARTING_PRACTICE, bareAtTailM: 0, wrapStartTailM: 0, wrapFinishTailM: 0 },
    });
    if (!work.ok) throw new Error(work.fault.map(({ code }) => code).join());
    const layer = work.value.layers[0]!;
    expect(layer.spindleRpm).toBe(3000);
    expect(off(layer.traverseMPerS, 12.7963e-3)).toBeLessThan(1e-5);
    expect(off((layer.wirePerStringM / layer.windSeconds) * 60, 6.2713)).toBeLessThan(1e-5);
    expect(off(layer.windSeconds, 70.333)).toBeLessThan(1e-5);
    expect(Math.round(layer.turns)).toBe(3517);
  });
});

describe('Wire under tension: sigma = T/A, strain = sigma/E, worked by hand', () => {
  const bronzeAreaM2 = (Math.PI / 4) * 0.254e-3 ** 2;

  it('0.254 mm phosphor bronze (110 GPa) at 10 N: 197.35 MPa, strain 1.7941e-3', () => {
    const pulled = pulledWire({ pullN: 10, areaM2: bronzeAreaM2, youngsModulusPa: 110e9 });
    expect(off(pulled.stressPa, 197.35e6)).toBeLessThan(1e-4);
    expect(off(pulled.strain, 1.7941e-3)).toBeLessThan(1e-4);
  });

  it('80 lbf, one piano bass-string maker’s core tension (trade letter, 2002): 513 MPa on 0.037 in, 347 MPa on 0.045 in, 16 to 23 % of the ASTM A228 minimum', () => {
    const pullN = 80 * 4.4482216152605;
    const share = (thou: number, expectedPa: number): number => {
      const diameterM = (thou / 1000) * INCH_M;
      const areaM2 = (Math.PI / 4) * diameterM ** 2;
      const { stressPa } = pulledWire({ pullN, areaM2, youngsModulusPa: 206e9 });
      expect(off(stressPa, expectedPa)).toBeLessThan(2e-3);
      const strength = tensileStrength({ table: 'astm-a228', diameterM, reading: 'linear' });
      if (!strength.ok) throw new Error(strength.fault.code);
      return stressPa / strength.value.minimumPa;
    };
    expect(share(37, 513e6)).toBeCloseTo(0.23, 2);
    expect(share(45, 347e6)).toBeCloseTo(0.16, 2);
  });

  it('the upper bound for 0.010 in phosphor bronze wrap is where the annealed wire breaks: 43 ksi (ASTM B159), 15.0 N', () => {
    const work = stringWork({ machine: SERVO, recipe: bronze36('hex'), lengthM: 1 });
    if (!work.ok) throw new Error(work.fault.map(({ code }) => code).join());
    const { wrapTension } = work.value.layers[0]!;
    if (wrapTension.kind !== 'no-record') throw new Error(wrapTension.kind);
    expect(off(wrapTension.upper, 43e3 * PSI_PA * bronzeAreaM2)).toBeLessThan(1e-6);
    expect(wrapTension.upper).toBeCloseTo(15.0, 1);
  });
});

describe('A loose tail: v = 2 pi r n', () => {
  it('0.30 m of it flies at 94 m/s at 3000 turns a minute and at 204 m/s at 6500', () => {
    expect(Math.round(tailSpeedMPerS(0.3, 3000))).toBe(94);
    expect(Math.round(tailSpeedMPerS(0.3, 6500))).toBe(204);
  });
});

describe('Whirl', () => {
  const BARE = 1.123e-3;
  const WOUND = 5.02e-3;
  const TENSION_N = 60;
  const SPAN_M = 0.4;
  const woundTo = (frontM: number) =>
    spanWoundTo({ freeSpanM: SPAN_M, woundLengthM: 1, frontM, bareKgPerM: BARE, woundKgPerM: WOUND });

  it('of an even span is the string equation’s f = (1/2l) sqrt(T/mu) (Mersenne 1636; Taylor 1713)', () => {
    for (const [frontM, kgPerM] of [
      [0, BARE],
      [SPAN_M, WOUND],
    ] as const) {
      const found = whirlHz({ segments: woundTo(frontM), tensionN: TENSION_N });
      expect(off(found, Math.sqrt(TENSION_N / kgPerM) / (2 * SPAN_M))).toBeLessThan(1e-12);
    }
  });

  it('of a half-wound core solves k1 cot(k1 a) + k2 cot(k2 b) = 0, the exact string of two weights', () => {
    for (const frontM of [0.02, 0.1, 0.2, 0.3, 0.38]) {
      const found = whirlHz({ segments: woundTo(frontM), tensionN: TENSION_N });
      const exact = firstRootOfTwoSegments({
        woundM: frontM,
        bareM: SPAN_M - frontM,
        woundKgPerM: WOUND,
        bareKgPerM: BARE,
        tensionN: TENSION_N,
      });
      expect(off(found, exact)).toBeLessThan(1e-9);
    }
  });

  it('of a half-wound core is the lowest eigenvalue of the finite-difference string', () => {
    for (const frontM of [0.1, 0.2, 0.3]) {
      const found = whirlHz({ segments: woundTo(frontM), tensionN: TENSION_N });
      expect(off(found, finiteDifferenceHz(woundTo(frontM), TENSION_N))).toBeLessThan(1e-5);
    }
  });

  it('of a half-wound core that a damper holds is the lowest eigenvalue of the finite-difference strings on either side', () => {
    // 0.20 m of 0.40 m are wound; the damper stands at 0.15 m.
    const wound = { lengthM: 0.15, linearDensityKgPerM: WOUND };
    const mixed = [
      { lengthM: 0.05, linearDensityKgPerM: WOUND },
      { lengthM: 0.2, linearDensityKgPerM: BARE },
    ];
    const found = whirlHz({ segments: woundTo(0.2), tensionN: TENSION_N, dampersAtM: [0.15] });
    const sides = [[wound], mixed].map((side) => finiteDifferenceHz(side, TENSION_N));
    expect(off(found, Math.min(...sides))).toBeLessThan(1e-5);
  });

  it('of a short winding in mid-span is the lowest eigenvalue of the finite-difference string', () => {
    const segments = spanWoundTo({
      freeSpanM: SPAN_M,
      woundLengthM: 0.1,
      frontM: 0.1,
      bareKgPerM: BARE,
      woundKgPerM: WOUND,
    });
    expect(segments).toHaveLength(3);
    const found = whirlHz({ segments, tensionN: TENSION_N });
    expect(off(found, finiteDifferenceHz(segments, TENSION_N))).toBeLessThan(1e-5);
  });

  it('agrees with Rayleigh’s quotient for a slight unevenness, f = f0 (1 - integral (dmu/mu) sin^2(pi x/l) dx / l) (Theory of Sound I, 1877, string of nearly even density; from memory)', () => {
    const slight = 1e-4;
    const segments = [
      { lengthM: 0.1, linearDensityKgPerM: BARE },
      { lengthM: 0.1, linearDensityKgPerM: BARE * (1 + slight) },
      { lengthM: 0.2, linearDensityKgPerM: BARE },
    ];
    const even = Math.sqrt(TENSION_N / BARE) / (2 * SPAN_M);
    // Integral of sin^2(pi x / l) over [l/4, l/2], divided by l: 1/8 + 1/(4 pi).
    const share = 1 / 8 + 1 / (4 * Math.PI);
    const lowered = 1 - whirlHz({ segments, tensionN: TENSION_N }) / even;
    expect(off(lowered, slight * share)).toBeLessThan(2e-4);
  });
});

/** Scans sin(k1 a) cos(k2 b) k2 + cos(k1 a) sin(k2 b) k1 for its first change of sign, then halves. */
function firstRootOfTwoSegments(string: {
  readonly woundM: number;
  readonly bareM: number;
  readonly woundKgPerM: number;
  readonly bareKgPerM: number;
  readonly tensionN: number;
}): number {
  const wave = (radPerS: number, kgPerM: number) => radPerS * Math.sqrt(kgPerM / string.tensionN);
  const mismatch = (radPerS: number): number => {
    const k1 = wave(radPerS, string.woundKgPerM);
    const k2 = wave(radPerS, string.bareKgPerM);
    const [a, b] = [k1 * string.woundM, k2 * string.bareM];
    return Math.sin(a) * Math.cos(b) * k1 ** -1 + Math.cos(a) * Math.sin(b) * k2 ** -1;
  };
  let low = 1;
  let high = 2;
  while (mismatch(high) > 0) {
    low = high;
    high += 1;
  }
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (mismatch(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2 / (2 * Math.PI);
}

/**
 * Lowest eigenvalue of T (-y[i-1] + 2 y[i] - y[i+1]) / h^2 = omega^2 mu[i] y[i] on 2000 intervals, by inverse
 * iteration (Thomas's algorithm). Second order in h: (pi / 2000)^2 / 24 is some 1e-7 of the frequency on an
 * even string, more at a joint; hence the tolerance of 1e-5.
 */
function finiteDifferenceHz(segments: readonly SpanSegment[], tensionN: number): number {
  const intervals = 2000;
  const lengthM = segments.reduce((sum, segment) => sum + segment.lengthM, 0);
  const stepM = lengthM / intervals;
  // A node on a joint carries half of either side.
  const masses = Array.from({ length: intervals - 1 }, (_, index) => {
    const atM = (index + 1) * stepM;
    return (densityAt(segments, atM - stepM / 4) + densityAt(segments, atM + stepM / 4)) / 2;
  });
  let shape = masses.map(() => 1);
  let squared = 0;
  for (let iteration = 0; iteration < 60; iteration++) {
    const next = solveSecondDifference(shape.map((y, index) => (y * masses[index]! * stepM ** 2) / tensionN));
    const energy = next.reduce((sum, y, index) => sum + y * masses[index]! * shape[index]!, 0);
    const norm = next.reduce((sum, y, index) => sum + y * y * masses[index]!, 0);
    squared = energy / norm;
    const scale = Math.sqrt(norm);
    shape = next.map((y) => y / scale);
  }
  return Math.sqrt(squared) / (2 * Math.PI);
}

function densityAt(segments: readonly SpanSegment[], atM: number): number {
  let startM = 0;
  for (const { lengthM, linearDensityKgPerM } of segments) {
    startM += lengthM;
    if (atM <= startM) return linearDensityKgPerM;
  }
  return segments.at(-1)!.linearDensityKgPerM;
}

/** Solves -x[i-1] + 2 x[i] - x[i+1] = right[i] with x = 0 beyond both ends. */
function solveSecondDifference(right: readonly number[]): number[] {
  const upper: number[] = [];
  const reduced: number[] = [];
  for (const [index, value] of right.entries()) {
    const pivot = 2 - (upper[index - 1] ?? 0);
    upper.push(1 / pivot);
    reduced.push((value + (reduced[index - 1] ?? 0)) / pivot);
  }
  const solution = [...reduced];
  for (let index = solution.length - 2; index >= 0; index--) {
    solution[index] = reduced[index]! + upper[index]! * solution[index + 1]!;
  }
  return solution;
}
