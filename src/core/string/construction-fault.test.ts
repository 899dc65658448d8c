import { describe, expect, it } from 'vitest';
import { stringBody } from './body.js';
import type { CoreWire, WoundConstruction, WrapLayer } from './construction.js';

const CORE: CoreWire = {
  shape: 'hex',
  sizeM: 0.0004064,
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
};
const WRAP: WrapLayer = { wireDiameterM: 0.000254, alloy: 'phosphor-bronze', gap: 0 };

const wound = (core: Partial<CoreWire>, wrap: Partial<WrapLayer>): WoundConstruction => ({
  kind: 'wound',
  core: { ...CORE, ...core },
  layers: [{ ...WRAP, ...wrap }],
});
const faultOf = (construction: WoundConstruction) => {
  const body = stringBody(construction);
  return body.ok ? undefined : body.fault;
};

describe('a string that cannot be made', () => {
  it('is refused for turns that would have to overlap', () => {
    expect(faultOf(wound({}, { gap: -0.001 }))).toEqual({
      code: 'construction.gap-negative',
      piece: 'wrap-1',
      gap: -0.001,
    });
    expect(faultOf(wound({}, { gap: Number.NaN }))?.code).toBe('construction.gap-negative');
  });

  it.each([0, -0.0003, Number.NaN])('is refused for a wire of size %f', (size) => {
    expect(faultOf(wound({ sizeM: size }, {}))).toMatchObject({
      code: 'construction.size-not-positive',
      piece: 'core',
    });
    expect(faultOf(wound({}, { wireDiameterM: size }))).toMatchObject({
      code: 'construction.size-not-positive',
      piece: 'wrap-1',
    });
  });

  it.each([
    ['thousandths of an inch', 16],
    ['inches', 0.016],
    ['millimetres', 0.4064],
  ])('is refused for a size in %s where metres are meant', (_unit, size) => {
    expect(faultOf(wound({ sizeM: size }, {}))?.code).toBe('construction.size-too-large');
  });

  it('is refused for rolled wrap thicker than the wire it came from', () => {
    expect(faultOf(wound({}, { rolledThicknessM: 0.0003 }))).toEqual({
      code: 'construction.rolled-too-thick',
      piece: 'wrap-1',
      rolledThicknessM: 0.0003,
      wireDiameterM: 0.000254,
    });
  });

  it('is refused for a ribbon wider than the way round the core', () => {
    const ribbon = wound({ shape: 'round', sizeM: 0.0001 }, { rolledThicknessM: 0.00002 });
    expect(faultOf(ribbon)).toMatchObject({ code: 'construction.wrap-too-wide', piece: 'wrap-1' });
  });

  it('is told which layer is at fault', () => {
    const double: WoundConstruction = {
      kind: 'wound',
      core: CORE,
      layers: [WRAP, { ...WRAP, gap: -1 }],
    };
    expect(faultOf(double)).toMatchObject({ code: 'construction.gap-negative', piece: 'wrap-2' });
  });
});
