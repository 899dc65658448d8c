import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bend, bendPullN, bentRatio } from './bend.js';
import type { StringBody } from './body.js';
import { pushAside } from './side-push.js';
import type { StretchedString } from './stretched.js';

/** A string by what bending depends on; the rest is of no matter here. */
const string = (changes: Partial<StretchedString>): StretchedString => ({
  body: {} as StringBody,
  speakingLengthM: 0.648,
  stretchingLengthM: 0.648,
  frequencyHz: 329.63,
  tensionN: 72.6,
  stressPa: 1.43e9,
  stressShare: 0.5,
  kappa: 140,
  bendingParameter: 0.001,
  inharmonicityB: 1e-5,
  ...changes,
});

const kappas = fc.double({ min: 20, max: 600, noNaN: true });
const frets = fc.integer({ min: 1, max: 22 });

describe('bending a string', () => {
  it('by the pull reckoned for a ratio gives that ratio back (Grimes 2014, eq. 6 and its inverse)', () => {
    fc.assert(
      fc.property(kappas, fc.double({ min: 1.0001, max: 1.5, noNaN: true }), (kappa, ratio) => {
        const added = bendPullN(70, kappa, ratio);
        const strain = added / (70 * kappa);
        expect(Math.abs(bentRatio(kappa, strain) / ratio - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it('at the 12th fret of a clamped string is Grimes 2014, eq. 6: the triangle of travel and half length', () => {
    fc.assert(
      fc.property(kappas, fc.double({ min: 20, max: 400, noNaN: true }), (kappa, cents) => {
        const clamped = string({ kappa });
        const bent = bend(clamped, { fret: 12, cents })!;
        const angle = Math.atan2(bent.travelM, clamped.speakingLengthM / 2);
        const ratio = bentRatio(kappa, 1 / Math.cos(angle) - 1);
        expect(1200 * Math.log2(ratio)).toBeCloseTo(cents, 4);
        expect(bent.tensionN - clamped.tensionN).toBeCloseTo(
          bendPullN(clamped.tensionN, kappa, 2 ** (cents / 1200)),
          4,
        );
        expect(bent.forceN).toBeCloseTo(2 * bent.tensionN * Math.sin(angle), 9);
      }),
    );
  });

  it('comes to 19.0 N, 19.9 mm, 11.2 N for a .010 at E4 and 19.3 N, 11.8 mm, 6.8 N for a .017 at G3 (hand-worked, 648 mm, 200 GPa)', () => {
    const steel = { E: 200e9, rho: 7850 };
    const rows = [
      { d: 0.000254, f: 329.628, added: 19.0, travel: 19.9, force: 11.2 },
      { d: 0.0004318, f: 195.998, added: 19.3, travel: 11.8, force: 6.8 },
    ];
    for (const { d, f, added, travel, force } of rows) {
      const area = (Math.PI / 4) * d * d;
      const tensionN = steel.rho * area * (2 * 0.648 * f) ** 2;
      const bent = bend(string({ tensionN, kappa: (steel.E * area) / tensionN }), { fret: 12, cents: 200 })!;
      expect(bent.tensionN - tensionN).toBeCloseTo(added, 1);
      expect(bent.travelM * 1000).toBeCloseTo(travel, 1);
      expect(bent.forceN).toBeCloseTo(force, 1);
    }
  });

  it('takes more travel and force the further up it goes, and a stiffer string takes less travel', () => {
    fc.assert(
      fc.property(kappas, frets, (kappa, fret) => {
        const half = bend(string({ kappa }), { fret, cents: 100 })!;
        const whole = bend(string({ kappa }), { fret, cents: 200 })!;
        expect(whole.travelM).toBeGreaterThan(half.travelM);
        expect(whole.forceN).toBeGreaterThan(half.forceN);
        const stiffer = bend(string({ kappa: kappa * 1.1 }), { fret, cents: 200 })!;
        expect(stiffer.travelM).toBeLessThan(whole.travelM);
      }),
    );
  });

  it('takes more travel when more wire stretches along', () => {
    const clamped = bend(string({}), { fret: 10, cents: 200 })!;
    const sliding = bend(string({ stretchingLengthM: 0.85 }), { fret: 10, cents: 200 })!;
    expect(sliding.travelM).toBeGreaterThan(clamped.travelM);
  });

  it('tells how finely to aim: cents per millimetre is the slope where the bend arrives', () => {
    fc.assert(
      fc.property(frets, kappas, (fret, kappa) => {
        const low = bend(string({ kappa }), { fret, cents: 199 })!;
        const at = bend(string({ kappa }), { fret, cents: 200 })!;
        const high = bend(string({ kappa }), { fret, cents: 201 })!;
        const slope = 2 / ((high.travelM - low.travelM) * 1000);
        expect(at.centsPerMm / slope).toBeCloseTo(1, 3);
      }),
    );
  });

  it('cannot reach a note that no push gives', () => {
    expect(bend(string({ kappa: 0.5 }), { fret: 12, cents: 200 })).toBeUndefined();
  });

  it('raises the stress with the pull', () => {
    const bent = bend(string({}), { fret: 12, cents: 200 })!;
    expect(bent.stressShare).toBeCloseTo((0.5 * bent.tensionN) / 72.6, 12);
    const unknown = bend(string({ stressShare: undefined }), { fret: 12, cents: 200 })!;
    expect(unknown.stressShare).toBeUndefined();
  });
});

describe('pushing a string aside', () => {
  it('a little takes T y (1/a + 1/b), wherever along it', () => {
    const soft = string({ kappa: 100 });
    const pushed = pushAside(soft, { distanceToNutM: 0.2, distanceToSaddleM: 0.448, pushM: 1e-5 });
    expect(pushed.forceN / (72.6 * 1e-5 * (1 / 0.2 + 1 / 0.448))).toBeCloseTo(1, 6);
  });

  it('by a millimetre at the middle takes 4 T y / L + 8 EA y³ / (L² L_s)', () => {
    const one = string({ stretchingLengthM: 0.85 });
    const y = 0.001;
    const { forceN } = pushAside(one, { distanceToNutM: 0.324, distanceToSaddleM: 0.324, pushM: y });
    const series =
      (4 * one.tensionN * y) / 0.648 + (8 * one.kappa * one.tensionN * y ** 3) / (0.648 ** 2 * 0.85);
    // The next terms are smaller by (2 y / L)² = 1e-5.
    expect(Math.abs(forceN / series - 1)).toBeLessThan(2e-5);
  });
});
