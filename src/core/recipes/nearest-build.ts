import { metresFromThou, thouFromMetres } from '../units/index.js';
import {
  type BuildSearch,
  isSane,
  layersAreSane,
  nearestWrap,
  sortedByDiameter,
  wrapNeededM,
} from './builds-within.js';
import { usualCoreRatio } from './core-ratio.js';
import type { OfferedCore, OfferedWrap } from './offered-wire.js';
import type { NearestBuild, WrapNeeded } from './recipe-fault.js';

/** Of all that the wires at hand can sanely make, what comes nearest to the diameter; undefined where there is nothing. */
export function nearestBuild(search: BuildSearch): NearestBuild | undefined {
  const outer = sortedByDiameter(search.outerWraps);
  let nearest: NearestBuild | undefined;
  const consider = (core: OfferedCore, inner: OfferedWrap | undefined): void => {
    const innerM = inner?.wireDiameterM ?? 0;
    const neededM = wrapNeededM(core, innerM, search.diameterM, search.seat);
    const wrap = nearestWrap(outer, neededM);
    if (!wrap || (inner && !layersAreSane(innerM, wrap.wireDiameterM))) return;
    const offGaugeM = 2 * search.seat.flattening.value * (wrap.wireDiameterM - neededM);
    const meanDiameterM = search.diameterM + offGaugeM;
    if (nearest && Math.abs(offGaugeM) >= Math.abs(nearest.offGaugeM)) return;
    if (!isSane(core, meanDiameterM)) return;
    nearest = {
      gaugeThou: thouFromMetres(meanDiameterM),
      meanDiameterM,
      offGaugeM,
      coreWireId: core.wireId,
      wrapWireIds: inner ? [inner.wireId, wrap.wireId] : [wrap.wireId],
    };
  };
  for (const core of search.cores) {
    consider(core, undefined);
    for (const inner of search.innerWraps) consider(core, inner);
  }
  return nearest;
}

/** The wrap diameters that single-layer strings of this diameter would need, for the three cores nearest to the usual ratio. */
export function wrapsNeeded(search: BuildSearch): WrapNeeded[] {
  const target = usualCoreRatio(thouFromMetres(search.diameterM));
  const off = (core: OfferedCore): number => Math.abs(core.sizeM / search.diameterM - target);
  return search.cores
    .filter((core) => isSane(core, search.diameterM))
    .toSorted((a, b) => off(a) - off(b) || (a.wireId < b.wireId ? -1 : 1))
    .map((core) => ({
      coreWireId: core.wireId,
      coreSizeM: core.sizeM,
      wireDiameterM: wrapNeededM(core, 0, search.diameterM, search.seat),
      coreRatio: core.sizeM / search.diameterM,
    }))
    .filter((needed) => needed.wireDiameterM > 0)
    .slice(0, 3);
}

/** Round core wires next to a plain gauge, at most one below and one above, the nearer first. */
export function nearestPlainWires(cores: readonly OfferedCore[], gaugeThou: number): NearestBuild[] {
  const gaugeM = metresFromThou(gaugeThou);
  const round = cores
    .filter((core) => core.shape === 'round')
    .toSorted((a, b) => a.sizeM - b.sizeM || (a.wireId < b.wireId ? -1 : 1));
  const below = round.findLast((core) => core.sizeM <= gaugeM);
  const above = round.find((core) => core.sizeM > gaugeM);
  return [below, above]
    .filter((core) => core !== undefined)
    .map((core) => ({
      gaugeThou: thouFromMetres(core.sizeM),
      meanDiameterM: core.sizeM,
      offGaugeM: core.sizeM - gaugeM,
      coreWireId: core.wireId,
      wrapWireIds: [],
    }))
    .sort((a, b) => Math.abs(a.offGaugeM) - Math.abs(b.offGaugeM));
}
