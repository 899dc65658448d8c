import { normal } from '../../../demo/index.js';
import { seededChance } from '../../core/foundation/index.js';
import type { RunToWind } from './choose-runs.js';

/** One run in so many is written down. Invented. */
const WRITTEN_SHARE = 0.6;
/** Of what strength bounds. Invented. */
const CORE_SHARE = 0.62;
const WRAP_SHARE = 0.27;
const RUN_SPREAD = 0.07;
const ROUND_N = 10;

/** What the winder of a run says that the machine is set to; nothing where nobody wrote it down. */
export function settingsWrittenDown({ work, spec }: RunToWind, name: string) {
  const chance = seededChance(seedOf(name));
  const { coreTension, layers } = work;
  if (spec.kind !== 'wound' || chance.next() > WRITTEN_SHARE) return undefined;
  const about = (limitN: number, share: number): number =>
    Math.round(ROUND_N * limitN * share * Math.exp(normal(chance, RUN_SPREAD))) / ROUND_N;
  const coreLimitN = coreTension && 'bound' in coreTension ? coreTension.bound?.upperN : undefined;
  return {
    ...(coreLimitN === undefined ? {} : { coreTensionN: about(coreLimitN, CORE_SHARE) }),
    layers: layers.map(({ wrapTension, spindleRpm }) => {
      const limitN = 'bound' in wrapTension ? wrapTension.bound?.upperN : undefined;
      return { spindleRpm, ...(limitN === undefined ? {} : { tensionN: about(limitN, WRAP_SHARE) }) };
    }),
  };
}

/** A whole number out of a name, always the same (FNV-1a, 32 bits). */
function seedOf(name: string): number {
  let seed = 0x811c9dc5;
  for (const letter of name) seed = Math.imul(seed ^ letter.charCodeAt(0), 0x01000193);
  return seed >>> 0;
}
