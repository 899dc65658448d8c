import { invariant } from '../foundation/index.js';
import type { Recipe } from '../recipes/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import {
  type Machine,
  type StringWork,
  stringWork,
  type UnableReason,
  type WireUse,
  wirePerString,
} from '../winding/index.js';
import type { Shop } from './shop.js';
import { whatIsKnown } from './what-is-known.js';

/** A kind of string with what making it takes in this shop. */
export interface Make {
  readonly spec: StringSpec;
  readonly recipe: Recipe;
  /** Wire of one string, core first. */
  readonly wire: readonly WireUse[];
  readonly able: readonly AbleMachine[];
  /** Every machine that cannot make it, and why. */
  readonly unable: readonly { readonly machine: Machine; readonly reasons: readonly UnableReason[] }[];
}

export interface AbleMachine {
  readonly machine: Machine;
  readonly work: StringWork;
}

/** Looks up how each kind of string is made, working it out once however often it is asked for. */
export type MakeOf = (stringKey: string) => Make;

/** The kinds of string that orders and bins can ask for, by key. */
export interface KnownKind {
  readonly spec: StringSpec;
  readonly recipeId: string;
}

/** A look-up over the kinds given. A kind that nobody named is a fault of the program. */
export function makeLookUp(shop: Shop, kinds: ReadonlyMap<string, KnownKind>): MakeOf {
  const recipes = new Map(shop.recipes.map((recipe) => [recipe.id, recipe]));
  const made = new Map<string, Make>();
  return (key) => {
    const before = made.get(key);
    if (before) return before;
    const kind = kinds.get(key);
    const recipe = kind && recipes.get(kind.recipeId);
    invariant(kind && recipe, `the kind of string "${key}" has a recipe`);
    const make = workOutMake(shop, kind.spec, recipe);
    made.set(key, make);
    return make;
  };
}

function workOutMake(shop: Shop, spec: StringSpec, recipe: Recipe): Make {
  const seat = shop.seat ? { seat: shop.seat } : {};
  const known = whatIsKnown(shop);
  const able: AbleMachine[] = [];
  const unable: Make['unable'][number][] = [];
  for (const machine of shop.machines) {
    const work = stringWork({ machine, recipe, lengthM: spec.lengthM, end: spec.end, ...known });
    if (work.ok) able.push({ machine, work: work.value });
    else unable.push({ machine, reasons: work.fault });
  }
  const wire = wirePerString(recipe, spec.lengthM, { end: spec.end, ...seat });
  return { spec, recipe, able, unable, wire: wire.ok ? wire.value : [] };
}

/** Kinds of string by key, from what is resolved and what lies in bins. */
export function knownKinds(
  shop: Shop,
  strings: readonly { readonly spec: StringSpec; readonly recipeId: string }[],
): ReadonlyMap<string, KnownKind> {
  const kinds = new Map<string, KnownKind>();
  const recipeOf = new Map(shop.recipes.map((recipe) => [recipeKey(recipe), recipe.id]));
  for (const { spec } of shop.strings) {
    const recipeId = recipeOf.get(recipeKey({ ...spec, construction: { kind: spec.kind } }));
    if (recipeId !== undefined) kinds.set(stringKey(spec), { spec, recipeId });
  }
  for (const { spec, recipeId } of strings) kinds.set(stringKey(spec), { spec, recipeId });
  return kinds;
}

const recipeKey = (
  named: Pick<Recipe, 'gaugeThou' | 'material'> & { construction: { kind: string } },
): string => `${named.gaugeThou} ${named.construction.kind} ${named.material}`;
