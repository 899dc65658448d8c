import { pullWire } from '../stock/index.js';
import type { DayRun, WirePull } from './day.js';
import type { MakeOf } from './make.js';
import type { Shop } from './shop.js';

/** Wire to carry to the machines for these runs: good strings, the run's scrap, and what dialling in takes. */
export function wirePulls(shop: Shop, runs: readonly DayRun[], makeOf: MakeOf): readonly WirePull[] {
  const needs = runs.flatMap((run) => {
    const strings = Math.ceil(run.quantity * (1 + shop.rates.runScrapShare)) + run.scrapStrings;
    return makeOf(run.stringKey).wire.map(({ wireId, kg, metres }) => ({
      wireId,
      kg: kg * strings,
      m: metres * strings,
      lotId: run.lotId,
    }));
  });
  return pullWire({ needs, spools: shop.spools }).map((pull) => ({
    ...pull,
    runs: needs.filter(({ wireId }) => wireId === pull.wireId).map(({ lotId }) => lotId),
  }));
}
