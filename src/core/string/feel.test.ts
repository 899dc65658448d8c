import { describe, expect, it } from 'vitest';
import { metresFromThou } from '../units/index.js';
import { bend } from './bend.js';
import { stringBody } from './body.js';
import { feel } from './feel.js';
import { stretch } from './stretched.js';
import { temperatureCentsPerK } from './temperature.js';

const plain = (thou: number, frequencyHz: number) => {
  const body = stringBody({
    kind: 'plain',
    wire: {
      shape: 'round',
      sizeM: metresFromThou(thou),
      alloy: 'music-wire',
      strengthTable: 'astm-a228',
    },
  });
  if (!body.ok) throw new Error(body.fault.code);
  return stretch(body.value, { speakingLengthM: 0.648, frequencyHz });
};

describe('the feel of a string', () => {
  it('is firmer under the plucking hand for the thicker string at one pitch, yet as quick to bend', () => {
    const thin = feel(plain(10, 329.63));
    const thick = feel(plain(12, 329.63));
    expect(thick.tensionN / thin.tensionN).toBeCloseTo(1.44, 10);
    expect(thick.sideForceN / thin.sideForceN).toBeCloseTo(1.44, 10);
    expect(thick.bend!.forceN / thin.bend!.forceN).toBeCloseTo(1.44, 6);
    expect(thick.centsPerMmPulled).toBeCloseTo(thin.centsPerMmPulled, 9);
    expect(thick.bend!.travelM).toBeCloseTo(thin.bend!.travelM, 9);
  });

  it('at equal pull differs by pitch: the lower string bends with less travel', () => {
    const high = feel(plain(10, 329.63));
    const low = feel(plain(10 * (329.63 / 246.94), 246.94));
    expect(low.tensionN).toBeCloseTo(high.tensionN, 9);
    expect(low.bend!.travelM).toBeLessThan(high.bend!.travelM);
    expect(low.centsPerMmPulled).toBeGreaterThan(high.centsPerMmPulled);
  });

  it('is that of a millimetre at mid-string, and of a whole tone at the 12th fret, unless asked otherwise', () => {
    const string = plain(10, 329.63);
    const felt = feel(string);
    expect(felt.sideForceN / ((4 * string.tensionN * 0.001) / 0.648)).toBeCloseTo(1, 2);
    expect(felt.bend).toEqual(bend(string, { fret: 12, cents: 200 }));
  });

  it('is told for the fret and interval asked for', () => {
    const string = plain(10, 329.63);
    expect(feel(string, { fret: 7, bendCents: 100 }).bend).toEqual(bend(string, { fret: 7, cents: 100 }));
  });

  it('moves with warmth only as far as string and frame expand apart', () => {
    const string = plain(10, 329.63);
    expect(feel(string).centsPerK).toBeLessThan(0);
    expect(temperatureCentsPerK(string, string.body.expansionPerK)).toBeCloseTo(0, 12);
    expect(temperatureCentsPerK(string, 2 * string.body.expansionPerK)).toBeCloseTo(
      -feel(string).centsPerK,
      12,
    );
  });
});
