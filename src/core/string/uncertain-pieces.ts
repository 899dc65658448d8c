import type { Estimate } from '../numeric/index.js';
import { type CorePiece, corePiece, wrapPiece } from './body.js';
import type { Construction, SeatModel, WrapLayer } from './construction.js';
import { placeCorrelated } from './correlated-seat.js';
import type { SeatFigures } from './seat.js';
import { seatFor } from './seat-family.js';
import { coreSize, densityOf, expansionOf, modulusOf, wrapSize } from './wire-uncertainty.js';
import type { WrapPiece } from './wrap.js';

/** The numbers of a construction that are not known exactly, and how to put pieces together from them. */
export interface UncertainPieces {
  readonly inputs: readonly Estimate[];
  /** Pieces from one number for each input, in their order. */
  readonly build: (numbers: readonly number[]) => {
    readonly core: CorePiece;
    readonly wraps: readonly WrapPiece[];
    readonly seat: SeatFigures;
  };
}

/** Hands out places for inputs: the same name gives the same place, so that one wire used twice errs once. */
interface InputList {
  readonly inputs: Estimate[];
  readonly placeOf: (name: string, input: Estimate) => number;
}

/** A construction as uncertain numbers: sizes, densities, moduli, expansion and seat. */
export function uncertainPieces(construction: Construction, seat: SeatModel): UncertainPieces {
  const list = inputList();
  const coreAt = placeCore(construction, list);
  const wrapsAt =
    construction.kind === 'plain' ? [] : construction.layers.map((layer) => placeWrap(layer, list));
  const seatAt = placeSeat(seatFor(construction, seat), list);
  return {
    inputs: list.inputs,
    build: (numbers) => ({
      core: coreAt(numbers),
      wraps: wrapsAt.map((wrapAt) => wrapAt(numbers)),
      seat: seatAt(numbers),
    }),
  };
}

function inputList(): InputList {
  const inputs: Estimate[] = [];
  const places = new Map<string, number>();
  return {
    inputs,
    placeOf: (name, input) => {
      const place = places.get(name) ?? inputs.push(input) - 1;
      places.set(name, place);
      return place;
    },
  };
}

function placeCore(construction: Construction, { placeOf }: InputList) {
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const found = corePiece(core);
  const size = placeOf('core size', coreSize(core));
  const density = placeOf(`density ${core.alloy}`, densityOf(core.alloy));
  const modulus = placeOf(`modulus ${core.alloy}`, modulusOf(core.alloy));
  const expansion = placeOf(`expansion ${core.alloy}`, expansionOf(core.alloy));
  return (numbers: readonly number[]): CorePiece => ({
    ...found,
    sizeM: numbers[size]!,
    densityKgPerM3: numbers[density]!,
    youngsModulusPa: numbers[modulus]!,
    expansionPerK: numbers[expansion]!,
  });
}

function placeWrap(layer: WrapLayer, { placeOf }: InputList) {
  const { alloy, wireDiameterM, rolledThicknessM } = layer;
  const found = wrapPiece(layer);
  const size = placeOf(`wrap ${alloy} ${wireDiameterM}`, wrapSize(wireDiameterM));
  const thickness =
    rolledThicknessM === undefined
      ? undefined
      : placeOf(`rolled ${alloy} ${wireDiameterM} ${rolledThicknessM}`, wrapSize(rolledThicknessM));
  const density = placeOf(`density ${alloy}`, densityOf(alloy));
  const modulus = placeOf(`modulus ${alloy}`, modulusOf(alloy));
  return (numbers: readonly number[]): WrapPiece => ({
    ...found,
    wireDiameterM: numbers[size]!,
    rolledThicknessM: thickness === undefined ? undefined : numbers[thickness]!,
    densityKgPerM3: numbers[density]!,
    youngsModulusPa: numbers[modulus]!,
  });
}

function placeSeat(seat: Omit<SeatModel, 'families'>, list: InputList) {
  const figuresAt = placeCorrelated(seat, list.placeOf);
  const bendingShare = list.placeOf('bending share', seat.bendingShare);
  return (numbers: readonly number[]): SeatFigures => ({
    ...figuresAt(numbers),
    bendingShare: numbers[bendingShare]!,
  });
}
