import type { SetUpSheet } from '../core/winding/index.js';

/** What a drawing of a string's section needs. Lengths in metres. */
export type SectionSource = Pick<SetUpSheet, 'core' | 'meanDiameterM'> & {
  readonly layers: readonly { readonly wireDiameterM: number; readonly wrapPitchM: number }[];
};

/** A string cut across and cut along, in metres, centred on its axis. */
export interface CrossSection {
  readonly outsideM: number;
  readonly core:
    | { readonly shape: 'round'; readonly diameterM: number }
    | { readonly shape: 'hex'; readonly corners: readonly (readonly [number, number])[] };
  /** From the core outwards. */
  readonly layers: readonly SectionLayer[];
}

export interface SectionLayer {
  readonly outsideM: number;
  /** Where the wire's centre runs, from the axis; its height across the string, its width along it. */
  readonly centreM: number;
  readonly heightM: number;
  readonly widthM: number;
  readonly pitchM: number;
}

/**
 * The section that goes with a set-up: wraps share the wall between the core's mean radius and the expected
 * mean outside diameter in proportion to their wires, so that the drawing shows what the micrometer should.
 */
export function crossSection(source: SectionSource): CrossSection {
  const seatM = source.core.shape === 'hex' ? HEX_MEAN_SEAT * source.core.sizeM : source.core.sizeM;
  const outsideM = source.layers.length === 0 ? source.core.sizeM : source.meanDiameterM.value;
  const wires = source.layers.reduce((sum, layer) => sum + layer.wireDiameterM, 0);
  const heightPerWire = (outsideM - seatM) / 2 / wires;
  let insideM = seatM;
  const layers = source.layers.map((layer): SectionLayer => {
    const heightM = heightPerWire * layer.wireDiameterM;
    const centreM = (insideM + heightM) / 2;
    insideM += 2 * heightM;
    return { outsideM: insideM, centreM, heightM, widthM: layer.wireDiameterM, pitchM: layer.wrapPitchM };
  });
  return { outsideM, core: coreShape(source.core), layers };
}

/** Mean of the radii of a hexagon's inscribed and circumscribed circles, over the inscribed one. */
const HEX_MEAN_SEAT = (1 + 2 / Math.sqrt(3)) / 2;

function coreShape({ shape, sizeM }: SectionSource['core']): CrossSection['core'] {
  if (shape === 'round') return { shape, diameterM: sizeM };
  const cornerM = sizeM / Math.sqrt(3);
  const corners = [0, 1, 2, 3, 4, 5].map((corner) => {
    const angle = (corner * Math.PI) / 3;
    return [cornerM * Math.cos(angle), cornerM * Math.sin(angle)] as const;
  });
  return { shape, corners };
}
