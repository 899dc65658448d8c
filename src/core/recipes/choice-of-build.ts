import { type Construction, PRIOR_SEAT, stringBody, type WrapLayer } from '../string/index.js';
import { metresFromThou } from '../units/index.js';
import { usualCoreRatio } from './core-ratio.js';
import { type Build, coreWireOf } from './offered-wire.js';
import type { RecipeChoice } from './recipe-choice.js';
import { recipeFigures, USUAL_SOUNDING } from './recipe-figures.js';
import type { RecipeSearch } from './recipe-search.js';

/** The build made, weighed and measured, its merits still open; none where its pieces cannot make a string. */
export function choiceOf(build: Build, search: RecipeSearch): RecipeChoice | undefined {
  const construction = constructionOf(build, search.gap ?? 0);
  const made = stringBody(construction, search.seat ?? PRIOR_SEAT);
  if (!made.ok) return undefined;
  const body = made.value;
  return {
    gaugeThou: search.gaugeThou,
    material: search.material,
    construction,
    coreWireId: build.core.wireId,
    wrapWireIds: build.wraps.map((wrap) => wrap.wireId),
    meanDiameterM: body.meanDiameterM,
    caliperDiameterM: body.caliperDiameterM,
    offGaugeM: body.meanDiameterM - metresFromThou(search.gaugeThou),
    figures: recipeFigures({
      build,
      body,
      sounding: search.sounding ?? USUAL_SOUNDING,
      targetCoreRatio: search.targetCoreRatio ?? usualCoreRatio(search.gaugeThou),
    }),
    bestAt: [],
  };
}

function constructionOf({ core, wraps }: Build, gap: number): Construction {
  const wire = coreWireOf(core);
  const [first, second] = wraps.map(
    (wrap): WrapLayer => ({ wireDiameterM: wrap.wireDiameterM, alloy: wrap.alloy, gap }),
  );
  if (!first) return { kind: 'plain', wire: { ...wire, shape: 'round' } };
  return { kind: 'wound', core: wire, layers: second ? [first, second] : [first] };
}
