import type { SeatModel } from '../string/index.js';
import { SANE_CORE_RATIO, SANE_INNER_SHARE } from './core-ratio.js';
import type { Build, OfferedCore, OfferedWrap } from './offered-wire.js';

export interface BuildSearch {
  readonly diameterM: number;
  readonly toleranceM: number;
  readonly cores: readonly OfferedCore[];
  /** Wraps that may be seen and touched. */
  readonly outerWraps: readonly OfferedWrap[];
  /** Wraps that may lie under another; empty where one layer is wanted. */
  readonly innerWraps: readonly OfferedWrap[];
  readonly seat: SeatModel;
}

/**
 * Every core with every wrap whose rotation-mean diameter lands within tolerance, by arithmetic on diameters
 * alone: `OD = D_s + 2 k_f (w1 + w2)`, `D_s` the core's size times e_m where it is a hexagon. Wraps are looked
 * up in a sorted list, so a core costs a few steps, not a walk through all wraps.
 *
 * Under two layers each core and inner wrap get the one outer wrap that lands nearest: the others within
 * tolerance differ by less than the tolerance and would only crowd the choice.
 */
export function buildsWithin(search: BuildSearch): Build[] {
  const outer = sortedByDiameter(search.outerWraps);
  const cores = search.cores.filter((core) => isSane(core, search.diameterM));
  return cores.flatMap((core) => [
    ...oneLayer(core, outer, search),
    ...search.innerWraps.flatMap((inner) => twoLayers(core, inner, outer, search)),
  ]);
}

/** Wrap diameter that would land exactly on the diameter over this core and what already lies on it. m; may be <= 0. */
export const wrapNeededM = (core: OfferedCore, innerM: number, diameterM: number, seat: SeatModel): number =>
  (diameterM - seatDiameterM(core, seat)) / (2 * seat.flattening.value) - innerM;

/** Wraps in order of diameter, equal ones in order of name, so that no answer hangs on the order of a list. */
export const sortedByDiameter = (wraps: readonly OfferedWrap[]): OfferedWrap[] =>
  wraps.toSorted((a, b) => a.wireDiameterM - b.wireDiameterM || (a.wireId < b.wireId ? -1 : 1));

/** Whether the core is neither a hair nor nearly the whole of a string of this diameter. */
export function isSane(core: OfferedCore, diameterM: number): boolean {
  const ratio = core.sizeM / diameterM;
  return ratio >= SANE_CORE_RATIO.least && ratio <= SANE_CORE_RATIO.most;
}

/** Whether an inner wrap may lie under this outer one. */
export function layersAreSane(innerM: number, outerM: number): boolean {
  const share = innerM / outerM;
  return share >= SANE_INNER_SHARE.least && share <= SANE_INNER_SHARE.most;
}

/** The wrap of a sorted list nearest in diameter; the thinner of two equally near. */
export function nearestWrap(sorted: readonly OfferedWrap[], wireDiameterM: number): OfferedWrap | undefined {
  const at = firstNotBelow(sorted, wireDiameterM);
  const below = sorted[at - 1];
  const above = sorted[at];
  if (!below || !above) return below ?? above;
  return wireDiameterM - below.wireDiameterM <= above.wireDiameterM - wireDiameterM ? below : above;
}

function oneLayer(core: OfferedCore, outer: readonly OfferedWrap[], search: BuildSearch): Build[] {
  const needed = wrapNeededM(core, 0, search.diameterM, search.seat);
  const slack = slackM(core, search);
  const builds: Build[] = [];
  for (let at = firstNotBelow(outer, needed - slack); at < outer.length; at++) {
    const wrap = outer[at]!;
    if (wrap.wireDiameterM > needed + slack) break;
    builds.push({ core, wraps: [wrap] });
  }
  return builds;
}

function twoLayers(
  core: OfferedCore,
  inner: OfferedWrap,
  outer: readonly OfferedWrap[],
  search: BuildSearch,
): Build[] {
  const needed = wrapNeededM(core, inner.wireDiameterM, search.diameterM, search.seat);
  if (!layersAreSane(inner.wireDiameterM, needed)) return [];
  const wrap = nearestWrap(outer, needed);
  const fits = wrap && Math.abs(wrap.wireDiameterM - needed) <= slackM(core, search);
  return fits ? [{ core, wraps: [inner, wrap] }] : [];
}

/**
 * Tolerance as the wrap wire feels it, and as much more as the families of the shop sit otherwise than all strings
 * together: the exact verdict is passed on the finished body.
 */
const slackM = (core: OfferedCore, search: BuildSearch): number =>
  (search.toleranceM + familyReachM(core, search)) / (2 * search.seat.flattening.value) + ROUNDING_M;

function familyReachM(core: OfferedCore, { seat, diameterM }: BuildSearch): number {
  const reaches = (seat.families ?? []).map(
    ({ massSeat, flattening }) =>
      Math.abs(massSeat.value - seat.massSeat.value) * core.sizeM +
      Math.abs(flattening.value - seat.flattening.value) * diameterM,
  );
  return Math.max(0, ...reaches);
}
const ROUNDING_M = 1e-12;

const seatDiameterM = (core: OfferedCore, seat: SeatModel): number =>
  core.shape === 'hex' ? seat.massSeat.value * core.sizeM : core.sizeM;

function firstNotBelow(sorted: readonly OfferedWrap[], wireDiameterM: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (sorted[middle]!.wireDiameterM < wireDiameterM) low = middle + 1;
    else high = middle;
  }
  return low;
}
