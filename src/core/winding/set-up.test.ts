import { describe, expect, it } from 'vitest';
import {
  BENCH,
  bronze36,
  GEAR,
  PLAIN_12,
  SERVO,
  specOf,
  TWO_LAYERS,
} from '../../../test/fixtures/winders.js';
import { type SetUpTask, setUp } from './set-up.js';
import type { SetUpSheet } from './set-up-sheet.js';
import { traitsOf } from './set-up-traits.js';

const HEX = bronze36('hex');

const sheetOf = (task: Partial<SetUpTask>): SetUpSheet => {
  const recipe = task.recipe ?? HEX;
  const sheet = setUp({ lotId: 'lot-1', machine: GEAR, recipe, spec: specOf(recipe), quantity: 25, ...task });
  if (!sheet.ok) throw new Error(sheet.fault.reasons.map(({ code }) => code).join());
  return sheet.value;
};

describe('a set-up sheet', () => {
  it('says what is wound, on what, and how many', () => {
    expect(sheetOf({})).toMatchObject({
      kind: 'wind',
      lotId: 'lot-1',
      machineId: 'gear-2',
      recipeId: 'bronze-36-hex',
      stringKey: '36 wound phosphor-bronze ball 1000 mm',
      positions: 2,
      quantity: 25,
      core: { wireId: 'core-hex-16', shape: 'hex', end: 'ball', cutLengthM: expect.closeTo(1.1, 12) },
    });
  });

  it('needs thirteen cycles for 25 strings at two positions', () => {
    const sheet = sheetOf({});
    expect(sheet.runMinutes).toBeCloseTo((13 * sheet.cycleSeconds) / 60, 12);
  });

  it('counts set-up from what stands on the machine', () => {
    expect(sheetOf({})).toMatchObject({ setUpMinutes: 30, expectedScrap: 7 });
    expect(sheetOf({ from: traitsOf(HEX, 1) })).toMatchObject({ setUpMinutes: 0, expectedScrap: 0 });
    expect(sheetOf({ from: traitsOf(bronze36('round'), 1) })).toMatchObject({ setUpMinutes: 18 });
  });

  it('expects a size and a weight with their uncertainty, of a hexagon wider at its corners', () => {
    const { meanDiameterM, caliperDiameterM, unitWeightKgPerM } = sheetOf({});
    expect(caliperDiameterM.value).toBeGreaterThan(meanDiameterM.value);
    for (const { value, u } of [meanDiameterM, caliperDiameterM, unitWeightKgPerM]) {
      expect(u).toBeGreaterThan(0);
      expect(u / value).toBeLessThan(0.1);
    }
  });

  it('expects the weight that goes with the pitch really given, not with the one wished', () => {
    const coarse = sheetOf({ machine: { ...GEAR, dialStep: 5 } });
    const fine = sheetOf({ machine: { ...GEAR, dialStep: 0.01 } });
    expect(coarse.layers[0]!.wrapPitchM).toBeGreaterThan(fine.layers[0]!.wrapPitchM * 1.01);
    expect(coarse.unitWeightKgPerM.value).toBeLessThan(fine.unitWeightKgPerM.value);
  });

  it('turns a hexagon by 30 degrees to see corners and flats, at places over the wound length', () => {
    const { firstOff } = sheetOf({});
    expect(firstOff).toMatchObject({ rotationsDeg: [0, 30], why: 'hex-corners-and-flats', kind: 'hex-core' });
    // Each of the two positions is judged by its own strings.
    expect(firstOff.strings).toBe(2 * firstOff.protocol.stringsEach);
    const { places } = firstOff.protocol;
    expect(firstOff.placesFromEndM).toEqual(
      Array.from({ length: places }, (_, at) => expect.closeTo(0.05 + (0.87 * at) / (places - 1), 12)),
    );
    expect(sheetOf({ recipe: bronze36('round') }).firstOff).toMatchObject({
      rotationsDeg: [0, 90],
      why: 'round-ovality',
    });
  });

  it('brings its cautions along, and how fast a loose tail would fly', () => {
    const sheet = sheetOf({ machine: SERVO });
    expect(sheet.cautions).toEqual(
      expect.arrayContaining(['rotating-spindle', 'lock-out', 'wire-whip', 'sharp-ends', 'local-rules']),
    );
    expect(sheet.cautions).not.toContain('flatten-round-core');
    expect(sheet.cautions).not.toContain('nickel-skin');
    expect(sheet.looseTail!.speedMPerS).toBeCloseTo(
      (2 * Math.PI * 0.1 * sheet.layers[0]!.spindleRpm) / 60,
      9,
    );
  });

  it('warns that a round core must be flattened under the ends first, and of nickel', () => {
    expect(sheetOf({ recipe: bronze36('round') }).cautions).toContain('flatten-round-core');
    expect(sheetOf({ recipe: TWO_LAYERS }).cautions).toContain('nickel-skin');
  });

  it('has for a plain string no turning parts, only a cut and an end', () => {
    const sheet = sheetOf({ machine: BENCH, recipe: PLAIN_12, quantity: 10 });
    expect(sheet).toMatchObject({ kind: 'cut', layers: [], runMinutes: 5 });
    expect(sheet.cautions).not.toContain('rotating-spindle');
    expect(sheet.cautions).toContain('wire-whip');
    for (const part of ['whirl', 'coreTension', 'looseTail']) expect(sheet).not.toHaveProperty(part);
    expect(sheet.meanDiameterM.value).toBeCloseTo(12 * 25.4e-6, 12);
    expect(sheet.firstOff.placesFromEndM).toEqual(
      [0.05, 0.5, 0.95].map((placeM) => expect.closeTo(placeM, 12)),
    );
  });

  it('is refused with every reason where the machine cannot', () => {
    const refused = setUp({
      lotId: 'lot-1',
      machine: BENCH,
      recipe: HEX,
      spec: specOf(HEX),
      quantity: 1,
    });
    expect(refused).toEqual({
      ok: false,
      fault: {
        code: 'winding.machine-unable',
        machineId: 'bench',
        recipeId: 'bronze-36-hex',
        reasons: [{ code: 'winding.wrong-station', needs: 'winder' }],
      },
    });
  });
});
