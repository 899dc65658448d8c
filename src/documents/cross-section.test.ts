import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossSection, type SectionSource } from './cross-section.js';

const source = (over: Partial<SectionSource>): SectionSource => ({
  core: { wireId: 'core', shape: 'hex', sizeM: 0.0004, cutLengthM: 1, end: 'ball' },
  layers: [{ wireDiameterM: 0.00035, wrapPitchM: 0.00036 }],
  meanDiameterM: { value: 0.00113, u: 0 },
  ...over,
});

describe('a section to scale', () => {
  it('is as wide as the string is expected to measure', () => {
    const layers = [
      { wireDiameterM: 0.0003, wrapPitchM: 0.0003 },
      { wireDiameterM: 0.0006, wrapPitchM: 0.0006 },
    ];
    const section = crossSection(source({ layers, meanDiameterM: { value: 0.0022, u: 0 } }));
    expect(section.outsideM).toBe(0.0022);
    expect(section.layers.at(-1)!.outsideM).toBeCloseTo(0.0022, 12);
  });

  it('a hexagon stands its size apart from flat to flat', () => {
    const { core } = crossSection(source({}));
    if (core.shape !== 'hex') throw new Error('the core lost its shape');
    const heights = core.corners.map(([, y]) => y);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(0.0004, 12);
  });

  it('a hexagon is 2/√3 of its size from corner to corner (regular hexagon)', () => {
    const { core } = crossSection(source({}));
    if (core.shape !== 'hex') throw new Error('the core lost its shape');
    const widths = core.corners.map(([x]) => x);
    expect(Math.max(...widths) - Math.min(...widths)).toBeCloseTo((0.0004 * 2) / Math.sqrt(3), 12);
  });

  it('a round core wound with wire that keeps its height leaves the wire its own diameter', () => {
    const core = { wireId: 'core', shape: 'round', sizeM: 0.0004, cutLengthM: 1, end: 'ball' } as const;
    const section = crossSection(source({ core, meanDiameterM: { value: 0.0011, u: 0 } }));
    expect(section.layers[0]!.heightM).toBeCloseTo(0.00035, 12);
    expect(section.layers[0]!.centreM).toBeCloseTo(0.000375, 12);
  });

  it('a plain string has no layers and its own diameter', () => {
    const core = { wireId: 'plain', shape: 'round', sizeM: 0.000254, cutLengthM: 1, end: 'ball' } as const;
    const section = crossSection(source({ core, layers: [], meanDiameterM: { value: 0.000254, u: 0 } }));
    expect(section).toEqual({
      outsideM: 0.000254,
      core: { shape: 'round', diameterM: 0.000254 },
      layers: [],
    });
  });

  it('each layer lies on the one inside it', () => {
    const wire = fc.double({ min: 1e-4, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(wire, wire, wire, (inner, outer, sizeM) => {
        const layers = [inner, outer].map((wireDiameterM) => ({ wireDiameterM, wrapPitchM: wireDiameterM }));
        const core = { wireId: 'core', shape: 'round', sizeM, cutLengthM: 1, end: 'ball' } as const;
        const meanDiameterM = { value: sizeM + 1.9 * (inner + outer), u: 0 };
        const [first, second] = crossSection({ core, layers, meanDiameterM }).layers;
        expect(first!.centreM - first!.heightM / 2).toBeCloseTo(sizeM / 2, 12);
        expect(second!.centreM - second!.heightM / 2).toBeCloseTo(first!.centreM + first!.heightM / 2, 12);
      }),
    );
  });
});
