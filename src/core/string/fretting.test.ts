import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Action, actionFromTwelfthFret, type FrettedString, frettingErrorCents } from './fretting.js';
import { setBacks } from './set-back.js';

const NO_SET_BACK = { saddleM: 0, nutM: 0 };
const FLAT: Action = { nutHeightM: 0, saddleOverNutM: 0 };
const steel = (changes: Partial<FrettedString> = {}): FrettedString => ({
  kappa: 200,
  bendingParameter: 0.002,
  speakingLengthM: 0.648,
  stretchingLengthM: 0.848,
  ...changes,
});

describe('a fretted note', () => {
  it('of a string without height or stiffness is in tune at every fret', () => {
    for (let fret = 0; fret <= 24; fret++) {
      const error = frettingErrorCents(steel({ bendingParameter: 0 }), {
        fret,
        action: FLAT,
        setBack: NO_SET_BACK,
      });
      expect(error).toBeCloseTo(0, 9);
    }
  });

  it('is sharp without set-backs, the more so with higher action, a stiffer string, or less wire to stretch', () => {
    const action = actionFromTwelfthFret(0.0005, 0.0018);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 22 }), (fret) => {
        const errorOf = (string: FrettedString, heights: Action) =>
          frettingErrorCents(string, { fret, action: heights, setBack: NO_SET_BACK });
        const error = errorOf(steel(), action);
        expect(error).toBeGreaterThan(0);
        expect(errorOf(steel(), actionFromTwelfthFret(0.0005, 0.0025))).toBeGreaterThan(error);
        expect(errorOf(steel({ bendingParameter: 0.003 }), action)).toBeGreaterThan(error);
        expect(errorOf(steel({ kappa: 300 }), action)).toBeGreaterThan(error);
        expect(errorOf(steel({ stretchingLengthM: 0.648 }), action)).toBeGreaterThan(error);
      }),
    );
  });

  it('follows the first-order law of Beausoleil 2024 for small heights', () => {
    const string = steel({ stretchingLengthM: 0.648 });
    const action: Action = { nutHeightM: 0.0005, saddleOverNutM: 0.002 };
    const setBack = { saddleM: 0.001, nutM: -0.0003 };
    const X0 = 0.648;
    for (let fret = 1; fret <= 12; fret++) {
      const g = 2 ** (fret / 12);
      const L0 = Math.hypot(X0 + setBack.saddleM + setBack.nutM, 0.002);
      const toSaddle = Math.hypot(X0 / g + setBack.saddleM, 0.0025);
      const toNut = Math.hypot(X0 - X0 / g + setBack.nutM, 0.0005);
      const Q = (toSaddle + toNut) / L0 - 1;
      const first =
        (1200 / Math.LN2) *
        ((g - 1) * (string.bendingParameter - setBack.saddleM / X0) +
          setBack.nutM / X0 +
          (string.kappa * Q) / 2);
      const exact = frettingErrorCents(string, { fret, action, setBack });
      // Left out: b² (1 + pi²/2)(g² - 1) of about 1731 x 1.8e-5 x 3 = 0.1 cent, and geometry of like size.
      expect(Math.abs(exact - first)).toBeLessThan(0.2);
    }
  });

  it('behind the fret runs on straight below the crown to the finger, then up to the nut', () => {
    const action: Action = { nutHeightM: 0.001, saddleOverNutM: 0.004, fingerBehindFretM: 0.012 };
    const limp = steel({ bendingParameter: 0, stretchingLengthM: 0.648 });
    const fret = 5;
    // Frets on the x axis, the fret's crown at the origin, saddle to the right.
    const toSaddle = 0.648 / 2 ** (fret / 12);
    const saddle = { x: toSaddle, y: 0.005 };
    const finger = { x: -0.012, y: -0.012 * (saddle.y / saddle.x) };
    const nut = { x: toSaddle - 0.648, y: 0.001 };
    const apart = (a: { x: number; y: number }, b: { x: number; y: number }) =>
      Math.hypot(a.x - b.x, a.y - b.y);
    const sounding = apart(saddle, { x: 0, y: 0 });
    const open = apart(saddle, nut);
    const strain = (apart(saddle, finger) + apart(finger, nut)) / open - 1;
    const ratio = (open / sounding) * Math.sqrt((1 + strain) * (1 + 200 * strain));
    const byPoints = 1200 * Math.log2(ratio) - 100 * fret;
    expect(frettingErrorCents(limp, { fret, action, setBack: NO_SET_BACK })).toBeCloseTo(byPoints, 8);
  });

  it('from the action measured at the 12th fret stands half way between nut and saddle there', () => {
    const { nutHeightM, saddleOverNutM } = actionFromTwelfthFret(0.0005, 0.0018);
    expect(nutHeightM + saddleOverNutM / 2).toBeCloseTo(0.0018, 15);
  });

  it('goes sharper as the finger presses further behind the fret', () => {
    const at = (fingerBehindFretM: number) =>
      frettingErrorCents(steel(), {
        fret: 5,
        action: { nutHeightM: 0.0005, saddleOverNutM: 0.002, fingerBehindFretM },
        setBack: NO_SET_BACK,
      });
    expect(at(0.01)).toBeGreaterThan(at(0));
  });
});

describe('saddle and nut set-backs', () => {
  const action = actionFromTwelfthFret(0.0005, 0.0018);

  it('leave less error than any stand near them', () => {
    const best = setBacks(steel(), { action });
    const rms = (saddleM: number, nutM: number) => {
      const errors = Array.from({ length: 12 }, (_, n) =>
        frettingErrorCents(steel(), { fret: n + 1, action, setBack: { saddleM, nutM } }),
      );
      return Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / 12);
    };
    expect(rms(best.saddleM, best.nutM)).toBeCloseTo(best.rmsCents, 12);
    for (const [dx, dy] of [
      [1e-5, 0],
      [-1e-5, 0],
      [0, 1e-5],
      [0, -1e-5],
    ] as const) {
      expect(rms(best.saddleM + dx, best.nutM + dy)).toBeGreaterThan(best.rmsCents);
    }
  });

  it('set the saddle back further for the stiffer string', () => {
    const saddle = (bendingParameter: number) => setBacks(steel({ bendingParameter }), { action }).saddleM;
    expect(saddle(0.003)).toBeGreaterThan(saddle(0.002));
  });

  it('are the more exact the fewer frets they serve', () => {
    const two = setBacks(steel(), { action, frets: [3, 12] });
    expect(two.rmsCents).toBeLessThan(1e-6);
    expect(two.errorsCents).toHaveLength(2);
  });

  it('cannot be told from one fret', () => {
    expect(() => setBacks(steel(), { action, frets: [12] })).toThrow();
  });
});
