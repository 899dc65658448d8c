import type { BodyOf, RecordKind, StoredRecord } from '../../contract/index.js';
import type { Recipe } from '../../core/recipes/index.js';
import type { Wire } from '../../core/stock/index.js';
import type { Machine } from '../../core/winding/index.js';
import { type RecipeRecord, recipeInCore } from '../production/recipe-in-core.js';

/** Records of a kind by their name, which is their id in the core, and the way from the record's id to it. */
export interface NameIndex<Kind extends RecordKind> {
  readonly byName: ReadonlyMap<string, StoredRecord<BodyOf<Kind>>>;
  readonly nameOf: (id: string) => string | undefined;
}

export function byName<Kind extends RecordKind>(
  records: readonly StoredRecord<BodyOf<Kind> & { readonly name: string }>[],
): NameIndex<Kind> {
  const nameById = new Map(records.map(({ id, body }) => [id, body.name]));
  return {
    byName: new Map(records.map((record) => [record.body.name, record])),
    nameOf: (id) => nameById.get(id),
  };
}

type Body<Kind extends RecordKind> = Pick<StoredRecord<BodyOf<Kind>>, 'body'>;

export const asWire = ({ body: { name, ...rest } }: Body<'wire'>): Wire => ({ id: name, ...rest });

export const asMachine = ({ body }: Body<'machine'>): Machine => ({ ...body, id: body.name });

/** Recipes as the core has them, those left out that could not be made any more. */
export const recipesOf = (records: readonly RecipeRecord[], wire: NameIndex<'wire'>): readonly Recipe[] =>
  records.flatMap((record) => asRecipe(record, wire) ?? []);

/** A recipe as the core has it, wires by their names; nothing where a wire of it is no record any more. */
export function asRecipe(record: RecipeRecord, wire: NameIndex<'wire'>): Recipe | undefined {
  const { body } = record;
  const coreWireId = wire.nameOf(body.coreWireId);
  const wrapWireIds = body.wrapWireIds.flatMap((id) => wire.nameOf(id) ?? []);
  if (coreWireId === undefined || wrapWireIds.length < body.wrapWireIds.length) return undefined;
  return { ...recipeInCore(record), id: body.name, coreWireId, wrapWireIds };
}
