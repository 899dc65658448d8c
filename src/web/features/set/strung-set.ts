import type { Shop } from '../../../core/day/index.js';
import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import { type Recipe, recipeBody } from '../../../core/recipes/index.js';
import {
  type Instrument,
  type StringSpec,
  stringKey,
  type TargetWish,
  type Tuning,
  targetsFor,
} from '../../../core/sets/index.js';
import {
  type NeckLoad,
  neckLoad,
  type StringBody,
  type StringEstimates,
  stringEstimates,
} from '../../../core/string/index.js';
import type { Pitch } from '../../../core/units/index.js';

/** A string in its place, sounding. */
export interface StrungString {
  readonly position: number;
  readonly spec: StringSpec;
  readonly recipe: Recipe;
  readonly body: StringBody;
  readonly pitch: Pitch;
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  readonly figures: StringEstimates;
  /** Left out where nothing is wished. */
  readonly wishedTensionN?: number;
  readonly onShelf: number;
}

/** A set on an instrument, with what its neck bears. */
export interface StrungSet {
  /** Treble first. */
  readonly strings: readonly StrungString[];
  /** Against the pulls wished, where there are any. */
  readonly load: NeckLoad;
}

/** A string of the set that the shop has no sound recipe for. */
export interface UnmadeString {
  readonly spec: StringSpec;
}

interface Place {
  readonly spec: StringSpec;
  readonly recipe: Recipe;
  readonly body: StringBody;
  readonly pitch: Pitch;
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  readonly wishedTensionN?: number;
}

export interface StringingQuestion {
  readonly specs: readonly StringSpec[];
  readonly instrument: Instrument;
  readonly tuning: Tuning;
  readonly wish: TargetWish;
  /** The tuning in which the set is at home, whose feel may be wished for. */
  readonly homeTuning: Tuning;
}

/** A set strung on an instrument and tuned: each string's figures, and the pull wished of it. */
export function strungSet(question: StringingQuestion, shop: Shop): Result<StrungSet, UnmadeString> {
  const { specs, instrument, tuning, wish, homeTuning } = question;
  const made = madeStrings(specs, shop);
  if (!made.ok) return made;
  const targets = targetsFor({
    instrument,
    tuning,
    wish,
    liked: {
      instrument,
      tuning: wish.target === 'feel' ? homeTuning : tuning,
      strings: made.value.map(({ body }) => body),
    },
  });
  const places = made.value.flatMap((string, at): Place[] => {
    const site = targets.ok ? targets.value.positions[at] : undefined;
    const pitch = tuning.pitches[at];
    if (!site || !pitch) return [];
    const { speakingLengthM, frequencyHz, targetTensionN } = site;
    return [{ ...string, pitch, speakingLengthM, frequencyHz, wishedTensionN: targetTensionN }];
  });
  return succeed(figured(places, shop));
}

type MadeString = Pick<Place, 'spec' | 'recipe' | 'body'>;

function madeStrings(specs: readonly StringSpec[], shop: Shop): Result<readonly MadeString[], UnmadeString> {
  const made: MadeString[] = [];
  for (const spec of specs) {
    const recipe = shop.recipes.find(
      ({ gaugeThou, material, construction }) =>
        gaugeThou === spec.gaugeThou && material === spec.material && construction.kind === spec.kind,
    );
    const body = recipe && recipeBody(recipe, shop.seat);
    if (!recipe || !body?.ok) return fail({ spec });
    made.push({ spec, recipe, body: body.value });
  }
  return succeed(made);
}

function figured(places: readonly Place[], shop: Shop): StrungSet {
  const strings = places.flatMap((place, at): StrungString[] => {
    const { speakingLengthM, frequencyHz } = place;
    const figures = stringEstimates(place.recipe.construction, { speakingLengthM, frequencyHz }, shop.seat);
    if (!figures.ok) return [];
    return [{ ...place, position: at + 1, figures: figures.value, onShelf: onShelf(place.spec, shop) }];
  });
  const pulls = strings.map(({ figures }) => ({ tensionN: figures.tensionN.value }));
  const wished = strings.flatMap(({ wishedTensionN }) =>
    wishedTensionN === undefined ? [] : [{ tensionN: wishedTensionN }],
  );
  return { strings, load: neckLoad(pulls, wished.length === pulls.length ? wished : undefined) };
}

const onShelf = (spec: StringSpec, { strings }: Shop): number =>
  strings
    .filter((stock) => stringKey(stock.spec) === stringKey(spec))
    .reduce((sum, { count }) => sum + count, 0);
