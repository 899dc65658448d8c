import type { Construction, SeatFamily, SeatModel, WrapBand } from './construction.js';

/** Outermost wrap wire up to and including this diameter, m, thinnest band first. Our own limits: thin wire flattens more. */
const WRAP_BANDS: readonly { readonly band: WrapBand; readonly upToM: number }[] = [
  { band: 'thin', upToM: 0.2e-3 },
  { band: 'middle', upToM: 0.35e-3 },
  { band: 'thick', upToM: Number.POSITIVE_INFINITY },
];

const wrapBandOf = (wireDiameterM: number): WrapBand =>
  WRAP_BANDS.find(({ upToM }) => wireDiameterM <= upToM)?.band ?? 'thick';

/** The family that a string belongs to by the way its wrap sits; none for a plain string. */
export function seatFamilyOf(construction: Construction): SeatFamily | undefined {
  if (construction.kind === 'plain') return undefined;
  const outermost = construction.layers.at(-1)!;
  return {
    coreShape: construction.core.shape,
    wrapAlloy: outermost.alloy,
    wrapBand: wrapBandOf(outermost.wireDiameterM),
  };
}

const sameFamily = (one: SeatFamily, other: SeatFamily): boolean =>
  one.coreShape === other.coreShape && one.wrapAlloy === other.wrapAlloy && one.wrapBand === other.wrapBand;

/** What holds for this string: its family's figures where the shop has learned them, else those of all strings. */
export function seatFor(construction: Construction, seat: SeatModel): Omit<SeatModel, 'families'> {
  const { families, ...ofAll } = seat;
  const family = families && seatFamilyOf(construction);
  if (!family) return ofAll;
  return families.find((each) => each.machineId === undefined && sameFamily(each.family, family)) ?? ofAll;
}

/** The seat model as one machine winds: where a family was learned on it, that stands for the family. */
export function seatOnMachine(seat: SeatModel, machineId: string): SeatModel {
  const { families } = seat;
  if (!families) return seat;
  const own = families.filter((each) => each.machineId === machineId);
  const others = families.filter(
    (each) => each.machineId === undefined && !own.some(({ family }) => sameFamily(family, each.family)),
  );
  return { ...seat, families: [...own.map(({ machineId: _, ...learned }) => learned), ...others] };
}
