import { describe, expect, it } from 'vitest';
import { type Construction, stringBody } from '../../../core/string/index.js';
import { hexagonCorners, sectionOf } from './section-of.js';

const construction: Construction = {
  kind: 'wound',
  core: { shape: 'hex', sizeM: 0.0004318, alloy: 'music-wire', strengthTable: 'astm-a228' },
  layers: [
    { wireDiameterM: 0.0004318, alloy: 'nickel-plated-steel', gap: 0 },
    { wireDiameterM: 0.000508, alloy: 'nickel-plated-steel', gap: 0 },
  ],
};

describe('the section of a string', () => {
  it('has rings that lie on one another, out to the diameter that the core expects', () => {
    const body = stringBody(construction);
    if (!body.ok) throw new Error(body.fault.code);
    const { layers, outsideM } = sectionOf({ construction }, body.value);
    expect(layers).toHaveLength(2);
    expect(layers[1]?.insideM).toBeCloseTo(layers[0]?.outsideM ?? 0, 12);
    expect(layers[1]?.outsideM).toBeCloseTo(outsideM, 12);
    expect(outsideM).toBe(body.value.meanDiameterM);
    for (const { centreM, insideM, heightM } of layers)
      expect(centreM).toBeCloseTo((insideM + heightM) / 2, 12);
  });

  it('has a hexagon as far across its flats as the wire', () => {
    const corners = hexagonCorners(2);
    const flat = Math.max(...corners.map(([, y]) => y));
    expect(2 * flat).toBeCloseTo(2, 12);
    for (const [x, y] of corners) expect(Math.hypot(x, y)).toBeCloseTo(2 / Math.sqrt(3), 12);
  });
});
