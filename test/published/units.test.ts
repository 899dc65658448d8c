import { describe, expect, it } from 'vitest';
import {
  awgFromDiameterM,
  centsBetween,
  diameterMFromAwg,
  frequencyHz,
  METRES_PER_INCH,
  metresFromThou,
  millimetresFromMetres,
  newtonsFromKilogramsForce,
  newtonsFromPoundsForce,
  parsePitch,
  pascalsFromKsi,
  semitoneRatio,
  thouFromMetres,
} from '../../src/core/units/index.js';

const hertzOf = (note: string): number => {
  const reading = parsePitch(note);
  if (!reading.ok || !reading.value.octaveGiven) throw new Error(`${note} is no pitch`);
  return frequencyHz(reading.value.pitch);
};

describe('pitch', () => {
  it('A4 is 440 Hz (ISO 16:1975)', () => {
    expect(hertzOf('A4')).toBe(440);
  });

  // Printed to 0.01 Hz.
  it.each([
    ['A0', 27.5],
    ['E2', 82.41],
    ['A2', 110.0],
    ['D3', 146.83],
    ['G3', 196.0],
    ['B3', 246.94],
    ['C4', 261.63],
    ['E4', 329.63],
    ['C8', 4186.01],
  ])('%s is %d Hz in equal temperament (table of piano keys at A4 = 440 Hz; from memory)', (note, hertz) => {
    expect(Math.abs(hertzOf(note) - hertz)).toBeLessThanOrEqual(0.005);
  });

  it('1 Hz at A3 is 8 cents (R. G. Beausoleil, JASA 156 (2024) 683, sec. I)', () => {
    // Printed as a whole number.
    expect(Math.abs(centsBetween(220, 221) - 8)).toBeLessThanOrEqual(0.5);
  });

  it('1731 df/f_mean is 46 cents short of an octave (R. G. Beausoleil, JASA 156 (2024) 683, fig. 1)', () => {
    const linear = (1731 * (440 - 220)) / ((440 + 220) / 2);
    expect(Math.abs(linear - centsBetween(220, 440) - -46)).toBeLessThanOrEqual(0.5);
  });

  // Printed to 15 decimals or one less.
  it.each([
    [1, 0.056125687318306],
    [2, 0.109101281859661],
    [3, 0.159103584746285],
    [4, 0.2062994740159],
  ])('fret %d takes %d of the scale (S. Bilbao et al., NESS guitar code, fret table)', (fret, share) => {
    // 1 - 2^(-n/12): the length left is inverse to the frequency.
    expect(Math.abs(1 - 1 / semitoneRatio(fret) - share)).toBeLessThan(1e-14);
  });

  it('a fifth is 1.498307 and a major third 1.259921 (2^(7/12) and 2^(4/12), digits from memory)', () => {
    expect(semitoneRatio(7)).toBeCloseTo(1.498307, 6);
    expect(semitoneRatio(4)).toBeCloseTo(1.259921, 6);
  });
});

describe('exact units', () => {
  it('an inch is 25.4 mm, a pound-force 4.4482216152605 N, a kilogram-force 9.80665 N (NIST SP 811, 2008, B.8, from memory)', () => {
    expect(METRES_PER_INCH).toBe(0.0254);
    expect(millimetresFromMetres(metresFromThou(1000))).toBe(25.4);
    expect(newtonsFromPoundsForce(1)).toBe(4.4482216152605);
    expect(newtonsFromKilogramsForce(1)).toBe(9.80665);
  });

  it('a pound-force is the weight of 0.45359237 kg (international agreement of 1959)', () => {
    expect(newtonsFromKilogramsForce(0.45359237)).toBeCloseTo(newtonsFromPoundsForce(1), 14);
  });

  it('1 ksi is 6.894757 MPa (NIST SP 811, 2008, B.8, from memory)', () => {
    expect(pascalsFromKsi(1) / 1e6).toBeCloseTo(6.894757, 6);
  });
});

describe('American Wire Gauge', () => {
  // By the progression, to 1e-5 mm.
  it.each([
    [24, 0.510559],
    [30, 0.254639],
    [36, 0.127],
    [40, 0.079871],
  ])('AWG %d is %d mm (progression of ASTM B258)', (n, millimetres) => {
    expect(Math.abs(diameterMFromAwg(n) * 1000 - millimetres)).toBeLessThan(1e-5);
  });

  // The standard rounds to 0.0001 in.
  it.each([
    [20, 0.032],
    [24, 0.0201],
    [28, 0.0126],
    [30, 0.01],
    [32, 0.008],
    [36, 0.005],
  ])('AWG %d is printed as %d in (ASTM B3-95, table 1)', (n, inches) => {
    expect(Math.abs(thouFromMetres(diameterMFromAwg(n)) / 1000 - inches)).toBeLessThanOrEqual(0.00005);
  });

  // The standard converts after rounding the inches.
  it.each([
    [20, 0.813],
    [24, 0.511],
    [28, 0.32],
    [30, 0.254],
    [32, 0.203],
    [36, 0.127],
  ])('AWG %d is printed as %d mm, which is its rounded inches (ASTM B3-95, table 1)', (n, millimetres) => {
    const roundedInches = Math.round(thouFromMetres(diameterMFromAwg(n)) * 10) / 10_000;
    expect(Number((roundedInches * 25.4).toFixed(3))).toBe(millimetres);
  });

  it('0000 is 0.46 in, 92 times AWG 36 (ASTM B258)', () => {
    expect(thouFromMetres(diameterMFromAwg(-3))).toBeCloseTo(460, 10);
  });

  it('0.2019 mm is AWG 32.00 (progression of ASTM B258)', () => {
    expect(Math.abs(awgFromDiameterM(0.0002019) - 32)).toBeLessThan(0.01);
  });
});
