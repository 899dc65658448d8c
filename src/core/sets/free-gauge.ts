import { monotoneInterpolation } from '../numeric/index.js';
import type { GaugeThou, StringMaterial } from '../recipes/index.js';
import type { SetPosition } from './set-position.js';
import type { StringCandidate } from './string-candidate.js';

/** The gauge that would meet a wished pull exactly, if any gauge could be had. */
export interface FreeGauge {
  readonly kind: 'plain' | 'wound';
  readonly material: StringMaterial;
  readonly gaugeThou: GaugeThou;
}

/**
 * For each kind and material among the candidates the gauge, not rounded, whose pull is the wished one:
 * mu_w = T_w / (2 L f)². Plain strings of one wire: gauge = g sqrt(mu_w / mu), exact. Wound: ln mu against gauge, a
 * monotone curve through the candidates, read the other way; left out where mu_w lies beyond the thinnest or
 * thickest of them, and where there are fewer than two. Of several recipes for a gauge the first by id counts.
 */
export function freeGauges(
  position: Pick<SetPosition, 'speakingLengthM' | 'frequencyHz' | 'targetTensionN'>,
  candidates: readonly StringCandidate[],
): FreeGauge[] {
  const wished = position.targetTensionN / (2 * position.speakingLengthM * position.frequencyHz) ** 2;
  return families(candidates).flatMap((family) => {
    const { kind, material } = family[0]!;
    const gaugeThou = kind === 'plain' ? plainGauge(family, wished) : woundGauge(family, wished);
    return gaugeThou === undefined ? [] : [{ kind, material, gaugeThou }];
  });
}

function families(candidates: readonly StringCandidate[]): StringCandidate[][] {
  const byFamily = new Map<string, StringCandidate[]>();
  const inOrder = candidates.toSorted((a, b) => a.gaugeThou - b.gaugeThou || (a.id < b.id ? -1 : 1));
  for (const candidate of inOrder) {
    const name = `${candidate.kind} ${candidate.material}`;
    byFamily.set(name, [...(byFamily.get(name) ?? []), candidate]);
  }
  return [...byFamily.keys()].sort().map((name) => byFamily.get(name)!);
}

/** From the candidate nearest in mass, so that a family of slightly different wires is met at its nearest. */
function plainGauge(family: readonly StringCandidate[], wished: number): GaugeThou {
  const off = ({ linearDensityKgPerM }: StringCandidate): number =>
    Math.abs(Math.log(linearDensityKgPerM / wished));
  const nearest = family.reduce((a, b) => (off(b) < off(a) ? b : a));
  return nearest.gaugeThou * Math.sqrt(wished / nearest.linearDensityKgPerM);
}

function woundGauge(family: readonly StringCandidate[], wished: number): GaugeThou | undefined {
  const gauges: number[] = [];
  const lnMasses: number[] = [];
  for (const { gaugeThou, linearDensityKgPerM } of family) {
    const lnMass = Math.log(linearDensityKgPerM);
    // A thicker string made lighter by a thinner core would bend the curve back: it is passed over.
    if (gaugeThou === gauges.at(-1) || lnMass <= (lnMasses.at(-1) ?? Number.NEGATIVE_INFINITY)) continue;
    gauges.push(gaugeThou);
    lnMasses.push(lnMass);
  }
  return gauges.length < 2 ? undefined : monotoneInterpolation(gauges, lnMasses).inverse(Math.log(wished));
}
