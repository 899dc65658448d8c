import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import { type Recipe, recipeBody } from '../recipes/index.js';
import { type LikedSet, wantedKind } from '../sets/index.js';
import { type StringBody, stringBody, tensionN } from '../string/index.js';
import { frequencyHz, metresFromThou } from '../units/index.js';
import type { Catalogue } from './catalogue.js';
import type { ReferenceSet, WantedString } from './order.js';

/** A string that was named and that the shop has no recipe for. */
export interface UnknownString {
  readonly gaugeThou: number;
  readonly kind: 'plain' | 'wound';
  readonly material?: string;
  readonly nearestGauges: readonly number[];
}

/**
 * A set that a player likes, as its strings weigh and stretch. A plain string is steel wire of its gauge
 * whether the shop makes it or not; a wound one is taken to be made as the shop would make it.
 */
export function likedSet(reference: ReferenceSet, catalogue: Catalogue): Result<LikedSet, UnknownString> {
  const strings: StringBody[] = [];
  for (const string of reference.strings) {
    const body = likedString(string, reference, catalogue);
    if (!body.ok) return body;
    strings.push(body.value);
  }
  return succeed({ instrument: reference.instrument, tuning: reference.tuning, strings });
}

/** Whole pull of a liked set where it is liked, N. */
export const likedTensionN = ({ instrument, tuning, strings }: LikedSet): number =>
  strings.reduce((sum, { linearDensityKgPerM }, at) => {
    const speakingLengthM = instrument.scaleLengthsM[at];
    const pitch = tuning.pitches[at];
    invariant(
      speakingLengthM !== undefined && pitch,
      'a liked set has a length and a pitch for every string',
    );
    return sum + tensionN(linearDensityKgPerM, speakingLengthM, frequencyHz(pitch, tuning.referenceHz));
  }, 0);

function likedString(
  string: WantedString,
  { material }: ReferenceSet,
  { recipes, rules, seat }: Catalogue,
): Result<StringBody, UnknownString> {
  const kind = wantedKind(string, rules);
  if (kind === 'plain') {
    const plain = stringBody({
      kind: 'plain',
      wire: {
        shape: 'round',
        sizeM: metresFromThou(string.gaugeThou),
        alloy: 'music-wire',
        strengthTable: 'astm-a228',
      },
    });
    if (plain.ok) return plain;
  }
  const likeIt = recipes.filter(
    (recipe) => recipe.construction.kind === kind && (kind === 'plain' || recipe.material === material),
  );
  const recipe = likeIt.find(({ gaugeThou }) => gaugeThou === string.gaugeThou);
  const body = recipe && recipeBody(recipe, seat);
  if (body?.ok) return body;
  return fail({
    gaugeThou: string.gaugeThou,
    kind,
    material,
    nearestGauges: nearest(string.gaugeThou, likeIt),
  });
}

const nearest = (gaugeThou: number, recipes: readonly Recipe[]): readonly number[] =>
  recipes
    .map((recipe) => recipe.gaugeThou)
    .sort((a, b) => Math.abs(a - gaugeThou) - Math.abs(b - gaugeThou))
    .slice(0, 2);
