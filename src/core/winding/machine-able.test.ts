import { describe, expect, it } from 'vitest';
import { BENCH, bronze36, GEAR, PLAIN_12, SERVO, TWO_LAYERS } from '../../../test/fixtures/winders.js';
import type { Recipe } from '../recipes/index.js';
import type { Machine } from './machine.js';
import { machineAble } from './machine-able.js';

const HEX = bronze36('hex');

const codes = (machine: Machine, recipe: Recipe, lengthM = 1): readonly string[] => {
  const able = machineAble(machine, recipe, lengthM);
  return able.ok ? [] : able.fault.map(({ code }) => code);
};

describe('whether a machine can make a string', () => {
  it('can where all is within its limits', () => {
    expect(machineAble(SERVO, HEX, 1)).toEqual({ ok: true, value: true });
    expect(codes(GEAR, bronze36('round'))).toEqual([]);
    expect(codes(BENCH, PLAIN_12)).toEqual([]);
  });

  it('winds on a winder and cuts on a bench', () => {
    expect(machineAble(BENCH, HEX, 1)).toEqual({
      ok: false,
      fault: [{ code: 'winding.wrong-station', needs: 'winder' }],
    });
    expect(machineAble(SERVO, PLAIN_12, 1)).toMatchObject({ fault: [{ needs: 'bench' }] });
  });

  it('says how long, how thick and how many layers it could', () => {
    expect(machineAble(SERVO, HEX, 1.3)).toEqual({
      ok: false,
      fault: [{ code: 'winding.string-too-long', lengthM: 1.3, mostM: 1.2 }],
    });
    expect(codes({ ...SERVO, gaugesThou: { least: 10, most: 30 } }, HEX)).toEqual([
      'winding.gauge-out-of-range',
    ]);
    expect(codes({ ...SERVO, coreSizeM: { least: 0.0001, most: 0.0004 } }, HEX)).toEqual([
      'winding.core-size-out-of-range',
    ]);
    expect(codes({ ...SERVO, maxLayers: 1 }, TWO_LAYERS)).toEqual(['winding.too-many-layers']);
    const thin = { ...SERVO, wrapDiameterM: { least: 0.0001, most: 0.0003 } };
    expect(machineAble(thin, TWO_LAYERS, 1)).toMatchObject({
      fault: [{ code: 'winding.wrap-out-of-range', layer: 1, diameterM: 0.4318e-3 }],
    });
  });

  it('knows which shape of core it holds', () => {
    expect(codes({ ...SERVO, hexCore: false }, HEX)).toEqual(['winding.core-shape-not-possible']);
    expect(codes({ ...SERVO, hexCore: false }, bronze36('round'))).toEqual([]);
    expect(codes({ ...SERVO, roundCore: false }, bronze36('round'))).toEqual([
      'winding.core-shape-not-possible',
    ]);
  });

  it('tells every reason at once', () => {
    const small = { ...SERVO, hexCore: false, longestStringM: 0.9, gaugesThou: { least: 10, most: 30 } };
    expect(codes(small, HEX)).toEqual([
      'winding.string-too-long',
      'winding.gauge-out-of-range',
      'winding.core-shape-not-possible',
    ]);
  });

  it('counts a size that equals a limit as within it', () => {
    const sizeM = 16 * 25.4e-6;
    expect(codes({ ...SERVO, coreSizeM: { least: sizeM, most: sizeM } }, HEX)).toEqual([]);
    expect(codes({ ...SERVO, longestStringM: 1, gaugesThou: { least: 36, most: 36 } }, HEX)).toEqual([]);
  });

  it('cannot where its dial or its spindle does not reach', () => {
    const table = GEAR.dialTable.slice(2);
    expect(machineAble({ ...GEAR, dialTable: table }, HEX, 1)).toMatchObject({
      fault: [{ code: 'winding.pitch-outside-range', layer: 0, leastM: 0.00052 }],
    });
    expect(machineAble({ ...SERVO, wireSpeedLimitMPerS: 0.001 }, HEX, 1)).toMatchObject({
      fault: [{ code: 'winding.spindle-too-fast', layer: 0, limitedBy: 'wire-speed' }],
    });
  });

  it('cannot wind a string that has no length to wind', () => {
    expect(machineAble(SERVO, HEX, 0.03)).toMatchObject({ fault: [{ code: 'winding.string-too-short' }] });
    expect(codes(BENCH, PLAIN_12, 0)).toEqual(['winding.string-too-short']);
  });

  it('passes on what is wrong with the construction itself', () => {
    const unsound: Recipe = {
      ...HEX,
      construction: {
        kind: 'wound',
        core: { shape: 'hex', sizeM: 4e-4, alloy: 'music-wire', strengthTable: 'astm-a228' },
        layers: [{ wireDiameterM: 2.5e-4, alloy: 'phosphor-bronze', gap: -0.1 }],
      },
    };
    expect(machineAble(SERVO, unsound, 1)).toMatchObject({
      fault: [{ code: 'winding.construction-unsound', fault: { code: 'construction.gap-negative' } }],
    });
  });
});
