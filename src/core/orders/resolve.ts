import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import { MATERIAL_NAMES, type Recipe, type StringMaterial } from '../recipes/index.js';
import { type StringEnd, type StringSet, type StringSpec, stringKey, wantedKind } from '../sets/index.js';
import { type RequestAnswerer, requestAnswerer } from './answer-request.js';
import { type Catalogue, lengthOverAllM } from './catalogue.js';
import { foldName, mostLike } from './likeness.js';
import type { OrderLine, PlayerRequest, WantedString } from './order.js';
import { resolveRequest } from './resolve-request.js';
import type { OrderFault, Resolution, ResolvedOrder, ResolvedString } from './resolved.js';

/** Resolves lines of one catalogue: look-ups are made once, then serve a whole file. */
export type Resolver = (line: OrderLine) => Resolution;

/** A resolver of order lines to strings with recipes, for this catalogue. */
export function resolver(catalogue: Catalogue): Resolver {
  const shelf = { catalogue, recipeOf: recipeIndex(catalogue.recipes) };
  const setOf = new Map(catalogue.sets.map((set) => [foldName(set.name), set]));
  const answer = requestAnswerer(catalogue);
  return (line) => {
    const { wanted } = line;
    if (wanted.kind === 'stock') return resolveStock(line, wanted, setOf, shelf);
    if (wanted.kind === 'custom') return resolveCustom(line, wanted, shelf);
    return resolveWish(line, wanted.request, answer, catalogue.rules.stressLimit);
  };
}

interface RecipeShelf {
  readonly catalogue: Catalogue;
  readonly recipeOf: ReadonlyMap<string, Recipe>;
}

const recipeIndex = (recipes: readonly Recipe[]): ReadonlyMap<string, Recipe> =>
  new Map(recipes.map((recipe) => [kindKey({ ...recipe, kind: recipe.construction.kind }), recipe]));

const kindKey = (kind: Pick<StringSpec, 'gaugeThou' | 'kind' | 'material'>): string =>
  `${kind.gaugeThou} ${kind.kind} ${kind.material}`;

type Stock = Extract<OrderLine['wanted'], { kind: 'stock' }>;

function resolveStock(
  line: OrderLine,
  wanted: Stock,
  setOf: ReadonlyMap<string, StringSet>,
  shelf: RecipeShelf,
): Resolution {
  const { setName } = wanted;
  const set = setOf.get(foldName(setName));
  if (!set) {
    const nearest = mostLike(
      setName,
      shelf.catalogue.sets.map(({ name }) => name),
    );
    return fail([
      faultOf(line, { column: 'set', read: setName, code: 'order.set-unknown', facts: { nearest } }),
    ]);
  }
  const other = toldOtherwise(wanted, set);
  if (other.length > 0) return fail(other.map((fault) => faultOf(line, fault)));
  const strings = withRecipes(line, set.strings, shelf);
  return strings.ok ? succeed(resolved(line, 'stock', set.name, strings.value)) : strings;
}

/** Material or end told beside a set's name that are not the set's: one of the two is not meant. */
function toldOtherwise({ material, end }: Stock, { strings }: StringSet): readonly LineFault[] {
  const unheeded = (column: string, read: string): LineFault => ({
    column,
    read,
    code: 'order.cell-unheeded',
    facts: {},
  });
  const wound = strings.filter(({ kind }) => kind === 'wound');
  const isOther =
    material !== undefined &&
    !(wound.length > 0 ? wound : strings).some((spec) => spec.material === material);
  return [
    ...(isOther ? [unheeded('material', MATERIAL_NAMES[material])] : []),
    ...(end !== undefined && strings.some((spec) => spec.end !== end) ? [unheeded('end', end)] : []),
  ];
}

type Custom = Extract<OrderLine['wanted'], { kind: 'custom' }>;

function resolveCustom(line: OrderLine, wanted: Custom, shelf: RecipeShelf): Resolution {
  const { rules } = shelf.catalogue;
  const specs = wanted.strings.map((string) =>
    specOf({ string, ...wanted, lengthM: lengthOverAllM(rules, wanted.longestScaleM), rules }),
  );
  const strings = withRecipes(line, specs, shelf);
  return strings.ok ? succeed(resolved(line, 'custom', customName(specs), strings.value)) : strings;
}

function resolveWish(
  line: OrderLine,
  request: PlayerRequest,
  answerer: RequestAnswerer,
  stressLimit: number,
): Resolution {
  const answered = resolveRequest(request, line.quantity, answerer, stressLimit);
  if (!answered.ok) return fail([faultOf(line, answered.fault)]);
  const { strings, warnings } = answered.value;
  const name = customName(strings.map(({ spec }) => spec));
  return succeed({ ...resolved(line, 'request', name, strings), warnings });
}

/** A wanted string as the kind that lies in a bin: plain or wound by the shop's rule where the player left it open. */
export function specOf(wanted: {
  readonly string: WantedString;
  readonly material: StringMaterial;
  readonly end: StringEnd;
  readonly lengthM: number;
  readonly rules: Pick<Catalogue['rules'], 'plainUpToThou'>;
}): StringSpec {
  const kind = wantedKind(wanted.string, wanted.rules);
  return {
    gaugeThou: wanted.string.gaugeThou,
    kind,
    material: kind === 'plain' ? 'plain-steel' : wanted.material,
    end: wanted.end,
    lengthM: wanted.lengthM,
  };
}

function withRecipes(
  line: OrderLine,
  specs: readonly StringSpec[],
  { catalogue, recipeOf }: RecipeShelf,
): Result<readonly ResolvedString[], readonly OrderFault[]> {
  const missing = specs.filter((spec) => !recipeOf.has(kindKey(spec)));
  if (missing.length > 0) return fail(missing.map((spec) => recipeMissing(line, spec, catalogue)));
  return succeed(
    specs.map((spec, at) => {
      const recipe = recipeOf.get(kindKey(spec));
      invariant(recipe, 'kinds without a recipe were refused');
      return { position: at + 1, spec, stringKey: stringKey(spec), recipeId: recipe.id };
    }),
  );
}

/** The gauges with a recipe just below and just above are what would work. */
function recipeMissing(line: OrderLine, spec: StringSpec, { recipes }: Catalogue): OrderFault {
  const made = recipes
    .filter(({ material, construction }) => material === spec.material && construction.kind === spec.kind)
    .map(({ gaugeThou }) => gaugeThou);
  const below = Math.max(...made.filter((gauge) => gauge < spec.gaugeThou));
  const above = Math.min(...made.filter((gauge) => gauge > spec.gaugeThou));
  return faultOf(line, {
    column: line.wanted.kind === 'stock' ? 'set' : 'gauges',
    read: String(spec.gaugeThou),
    code: 'order.recipe-missing',
    facts: {
      gaugeThou: spec.gaugeThou,
      kind: spec.kind,
      material: spec.material,
      nearestGauges: [below, above].filter(Number.isFinite),
    },
  });
}

function resolved(
  line: OrderLine,
  kind: ResolvedOrder['kind'],
  setName: string,
  strings: readonly ResolvedString[],
): ResolvedOrder {
  const { wanted: _, ...order } = line;
  return { ...order, kind, setName, strings, warnings: [] };
}

/** A custom set is called by its gauges and the material of its wound strings. */
export function customName(specs: readonly StringSpec[]): string {
  const named = specs.find(({ kind }) => kind === 'wound') ?? specs[0];
  return [
    specs.map(({ gaugeThou }) => gaugeThou).join('-'),
    ...(named ? [MATERIAL_NAMES[named.material]] : []),
  ].join(', ');
}

type LineFault = Omit<OrderFault, 'line' | 'orderId'>;

const faultOf = (line: OrderLine, fault: LineFault): OrderFault => ({
  line: line.line,
  orderId: line.orderId,
  ...fault,
});
