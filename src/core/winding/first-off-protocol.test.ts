import { describe, expect, it } from 'vitest';
import { seededChance } from '../foundation/index.js';
import { normalBelow } from '../stats/index.js';
import { firstOffProtocol } from './first-off-protocol.js';
import { type FirstOffClass, firstOffSpreads } from './first-off-spreads.js';

const TOLERANCE_M = 12.7e-6;
const CLASSES: readonly FirstOffClass[] = ['plain', 'round-core', 'hex-core', 'two-layers'];
const protocolOf = (kind: FirstOffClass, positions: 1 | 2 = 1) =>
  firstOffProtocol({ spreads: firstOffSpreads(kind, undefined), toleranceM: TOLERANCE_M, positions });

describe('how many first strings are measured', () => {
  it.each(CLASSES)('keeps the chances that it states, by exact normal calculation: %s', (kind) => {
    const { betweenM, withinM, micrometerM } = firstOffSpreads(kind, undefined);
    for (const positions of [1, 2] as const) {
      const { stringsEach, places, stopBeyondM, badM, goodM, ...odds } = protocolOf(kind, positions);
      const u = Math.sqrt((betweenM ** 2 + (withinM ** 2 + micrometerM ** 2) / places) / stringsEach);
      const within = (offM: number) =>
        normalBelow((stopBeyondM - offM) / u) - normalBelow((-stopBeyondM - offM) / u);
      expect(odds.letGoChance).toBeCloseTo(within(badM), 12);
      expect(odds.stopChance).toBeCloseTo(1 - within(goodM), 12);
      expect(within(badM)).toBeLessThanOrEqual(0.05);
      expect(1 - within(goodM)).toBeLessThanOrEqual(0.1 / positions + 1e-9);
      // A process this bad makes one string in four out of tolerance.
      const out =
        normalBelow((badM - TOLERANCE_M) / betweenM) + normalBelow((-TOLERANCE_M - badM) / betweenM);
      expect(out).toBeCloseTo(0.25, 9);
    }
  });

  it('keeps them in twenty thousand drawn first-offs too', () => {
    const spreads = firstOffSpreads('hex-core', undefined);
    const { stringsEach, places, stopBeyondM, badM, letGoChance } = protocolOf('hex-core');
    const chance = seededChance(77);
    const normal = () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
    const DRAWN = 20_000;
    let letGo = 0;
    for (let drawn = 0; drawn < DRAWN; drawn++) {
      let sum = 0;
      for (let string = 0; string < stringsEach; string++) {
        const meanM = badM + spreads.betweenM * normal();
        for (let place = 0; place < places; place++)
          sum += meanM + spreads.withinM * normal() + spreads.micrometerM * normal();
      }
      if (Math.abs(sum / stringsEach / places) <= stopBeyondM) letGo++;
    }
    // Five standard deviations of a share of 20,000.
    const most = 5 * Math.sqrt((letGoChance * (1 - letGoChance)) / DRAWN);
    expect(Math.abs(letGo / DRAWN - letGoChance)).toBeLessThan(most);
  });

  it('is the smallest: a string fewer would not do, nor a place fewer', () => {
    const spreads = firstOffSpreads('two-layers', undefined);
    const { stringsEach, places, badM, goodM } = protocolOf('two-layers');
    expect(stringsEach).toBeGreaterThan(2);
    const u = (strings: number, at: number) =>
      Math.sqrt((spreads.betweenM ** 2 + (spreads.withinM ** 2 + spreads.micrometerM ** 2) / at) / strings);
    // One-sided: more than (z_0.10 + z_0.05) standard deviations must lie between good and bad.
    const NEEDED = 1.2815515655 + 1.644853627;
    expect((badM - goodM) / u(stringsEach, places)).toBeGreaterThan(NEEDED - 1e-6);
    expect((badM - goodM) / u(stringsEach - 1, 5)).toBeLessThan(NEEDED);
  });

  it('asks more of rough strings than of even ones, and never fewer than two', () => {
    const counts = CLASSES.map((kind) => protocolOf(kind).stringsEach);
    expect(counts.toSorted((a, b) => a - b)).toEqual(counts);
    expect(Math.min(...counts)).toBe(2);
  });

  it('says where the tolerance cannot be told with what a winder can be asked for', () => {
    const rough = { ...firstOffSpreads('hex-core', undefined), betweenM: TOLERANCE_M };
    expect(firstOffProtocol({ spreads: rough, toleranceM: TOLERANCE_M, positions: 1 })).toMatchObject({
      stringsEach: 8,
      isEnough: false,
    });
  });
});

describe('how far strings differ', () => {
  it('is the shop’s own once it is known well enough, and of plain strings the usual', () => {
    const own = { stringM: 2e-6, degrees: 60 };
    expect(firstOffSpreads('hex-core', own)).toMatchObject({ betweenM: 2e-6, isOwn: true });
    expect(firstOffSpreads('hex-core', { ...own, degrees: 8 }).isOwn).toBe(false);
    expect(firstOffSpreads('plain', own).isOwn).toBe(false);
    expect(firstOffSpreads('two-layers', own).betweenM).toBeCloseTo(2e-6 * (0.32 / 0.25), 12);
  });
});
