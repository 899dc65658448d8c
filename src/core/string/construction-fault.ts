import type { Construction, CoreWire, WrapLayer } from './construction.js';

/** Where in a string a faulty piece sits: the core (or plain wire), or a layer of wrap counted from 1 outwards. */
export type Piece = 'core' | 'wrap-1' | 'wrap-2';

/** Why no string can be made so. */
export type ConstructionFault =
  | { readonly code: 'construction.size-not-positive'; readonly piece: Piece; readonly sizeM: number }
  | {
      readonly code: 'construction.size-too-large';
      readonly piece: Piece;
      readonly sizeM: number;
      readonly mostM: number;
    }
  | { readonly code: 'construction.gap-negative'; readonly piece: Piece; readonly gap: number }
  | {
      readonly code: 'construction.rolled-too-thick';
      readonly piece: Piece;
      readonly rolledThicknessM: number;
      readonly wireDiameterM: number;
    }
  | {
      readonly code: 'construction.wrap-too-wide';
      readonly piece: Piece;
      readonly wrapWidthM: number;
      /** pi times the winding diameter: turns of this width or more cannot lie side by side. */
      readonly circumferenceM: number;
    };

/** No wire in a string is thicker: a larger number is thousandths of an inch or millimetres taken for metres. */
const LARGEST_WIRE_M = 0.005;

/** The first thing wrong with the numbers of a construction before any of them is used, or undefined. */
export function constructionFault(construction: Construction): ConstructionFault | undefined {
  if (construction.kind === 'plain') return coreFault(construction.wire);
  const [first, second] = construction.layers;
  return (
    coreFault(construction.core) ?? layerFault(first, 'wrap-1') ?? (second && layerFault(second, 'wrap-2'))
  );
}

const coreFault = (core: CoreWire): ConstructionFault | undefined => sizeFault(core.sizeM, 'core');

function layerFault(layer: WrapLayer, piece: Piece): ConstructionFault | undefined {
  const { wireDiameterM, rolledThicknessM, gap } = layer;
  const fault = sizeFault(wireDiameterM, piece);
  if (fault) return fault;
  // Written so that NaN is refused too.
  if (!(gap >= 0 && gap < Number.POSITIVE_INFINITY)) return { code: 'construction.gap-negative', piece, gap };
  if (rolledThicknessM === undefined) return undefined;
  if (rolledThicknessM > wireDiameterM) {
    return { code: 'construction.rolled-too-thick', piece, rolledThicknessM, wireDiameterM };
  }
  return sizeFault(rolledThicknessM, piece);
}

function sizeFault(sizeM: number, piece: Piece): ConstructionFault | undefined {
  if (!(sizeM > 0)) return { code: 'construction.size-not-positive', piece, sizeM };
  if (sizeM > LARGEST_WIRE_M) {
    return { code: 'construction.size-too-large', piece, sizeM, mostM: LARGEST_WIRE_M };
  }
  return undefined;
}
