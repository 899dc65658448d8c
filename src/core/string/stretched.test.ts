import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ALLOYS } from '../materials/index.js';
import { metresFromThou } from '../units/index.js';
import { type StringBody, stringBody } from './body.js';
import { breakingFrequencyHz, semitonesToBreaking } from './breaking.js';
import { pulledFrequencyHz, stretch, tensionN } from './stretched.js';

const plain = (thou: number): StringBody => {
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
  return body.value;
};

const lengths = fc.double({ min: 0.3, max: 1, noNaN: true });
const pitches = fc.double({ min: 30, max: 700, noNaN: true });
const gauges = fc.double({ min: 8, max: 26, noNaN: true });

describe('a string under pull', () => {
  it('pulls four times as hard an octave up', () => {
    fc.assert(
      fc.property(gauges, lengths, pitches, (thou, speakingLengthM, frequencyHz) => {
        const body = plain(thou);
        const low = stretch(body, { speakingLengthM, frequencyHz });
        const high = stretch(body, { speakingLengthM, frequencyHz: 2 * frequencyHz });
        expect(high.tensionN / low.tensionN).toBeCloseTo(4, 12);
      }),
    );
  });

  it('sounds at the pitch its pull was reckoned from', () => {
    fc.assert(
      fc.property(lengths, pitches, (speakingLengthM, frequencyHz) => {
        const linearDensityKgPerM = 0.004;
        const pull = tensionN(linearDensityKgPerM, speakingLengthM, frequencyHz);
        const back = pulledFrequencyHz({ tensionN: pull, linearDensityKgPerM, speakingLengthM });
        expect(back / frequencyHz).toBeCloseTo(1, 12);
      }),
    );
  });

  it('when plain is under the same stress rho (2 L f)² at every gauge', () => {
    fc.assert(
      fc.property(gauges, lengths, pitches, (thou, speakingLengthM, frequencyHz) => {
        const { stressPa } = stretch(plain(thou), { speakingLengthM, frequencyHz });
        const rho = ALLOYS['music-wire'].densityKgPerM3.value;
        expect(stressPa / (rho * (2 * speakingLengthM * frequencyHz) ** 2)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('has B = pi² b², whichever of the two is in print', () => {
    fc.assert(
      fc.property(gauges, lengths, pitches, (thou, speakingLengthM, frequencyHz) => {
        const { bendingParameter: b, inharmonicityB } = stretch(plain(thou), {
          speakingLengthM,
          frequencyHz,
        });
        expect(inharmonicityB / (Math.PI * b) ** 2).toBeCloseTo(1, 12);
      }),
    );
  });

  it('uses up its strength at the breaking pitch, k semitones off by 2^(-k/6)', () => {
    const body = plain(10);
    const speakingLengthM = 0.648;
    const breaking = breakingFrequencyHz(body, speakingLengthM)!;
    const shareAt = (frequencyHz: number) => stretch(body, { speakingLengthM, frequencyHz }).stressShare!;
    expect(shareAt(breaking)).toBeCloseTo(1, 12);
    expect(semitonesToBreaking(shareAt(breaking * 2 ** (-5 / 12)))).toBeCloseTo(5, 10);
  });

  it('breaks at no known pitch where its strength is not known', () => {
    expect(breakingFrequencyHz(plain(1), 0.648)).toBeUndefined();
    expect(stretch(plain(1), { speakingLengthM: 0.648, frequencyHz: 330 }).stressShare).toBeUndefined();
  });

  it('stretches the wire beyond nut and saddle too unless told that it is clamped', () => {
    const free = stretch(plain(10), { speakingLengthM: 0.648, frequencyHz: 330 });
    expect(free.stretchingLengthM).toBeCloseTo(0.848, 12);
    const clamped = stretch(plain(10), {
      speakingLengthM: 0.648,
      frequencyHz: 330,
      stretchingLengthM: 0.648,
    });
    expect(clamped.stretchingLengthM).toBe(0.648);
  });

  it('is refused where nothing could sound', () => {
    expect(() => stretch(plain(10), { speakingLengthM: 0, frequencyHz: 330 })).toThrow();
    expect(() => stretch(plain(10), { speakingLengthM: 0.648, frequencyHz: Number.NaN })).toThrow();
    expect(() =>
      stretch(plain(10), { speakingLengthM: 0.648, frequencyHz: 330, stretchingLengthM: 0.6 }),
    ).toThrow();
  });
});
