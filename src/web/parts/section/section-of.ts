import type { Recipe } from '../../../core/recipes/index.js';
import type { StringBody } from '../../../core/string/index.js';

/** A string cut across and cut along, in metres, about its axis. */
export interface StringSection {
  readonly outsideM: number;
  readonly core: { readonly shape: 'round' | 'hex'; readonly sizeM: number };
  /** From the core outwards. */
  readonly layers: readonly SectionLayer[];
}

export interface SectionLayer {
  /** Diameters of the ring that the wrap fills. */
  readonly insideM: number;
  readonly outsideM: number;
  /** One turn cut through: its height across the string, its width along it, and where its centre runs. */
  readonly heightM: number;
  readonly widthM: number;
  readonly centreM: number;
  readonly pitchM: number;
}

/** The section of the string that a recipe makes, as the core reckons its body. */
export function sectionOf({ construction }: Pick<Recipe, 'construction'>, body: StringBody): StringSection {
  const wire = construction.kind === 'plain' ? construction.wire : construction.core;
  const wraps = construction.kind === 'plain' ? [] : construction.layers;
  return {
    outsideM: body.meanDiameterM,
    core: { shape: wire.shape, sizeM: wire.sizeM },
    layers: body.layers.map((layer, at): SectionLayer => {
      const insideM = layer.windingDiameterM - layer.heightM;
      return {
        insideM,
        outsideM: insideM + 2 * layer.heightM,
        heightM: layer.heightM,
        widthM: wraps[at]?.wireDiameterM ?? layer.heightM,
        centreM: layer.windingDiameterM / 2,
        pitchM: layer.wrapPitchM,
      };
    }),
  };
}

/** Corners of a hexagon about the axis from its distance across flats. */
export function hexagonCorners(acrossFlatsM: number): readonly (readonly [number, number])[] {
  const cornerM = acrossFlatsM / Math.sqrt(3);
  return [0, 1, 2, 3, 4, 5].map((corner) => {
    const angle = (corner * Math.PI) / 3;
    return [cornerM * Math.cos(angle), cornerM * Math.sin(angle)] as const;
  });
}
