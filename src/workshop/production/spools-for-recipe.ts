import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { SpoolRecord } from '../stock/spool-book.js';
import type { RecipeRecord } from './recipe-in-core.js';

type Tx = Pick<ReadTransaction, 'records'>;

/**
 * The ids of the spools, core first, once each is of a wire that the recipe takes and no wire of it lacks a
 * spool. Several of one wire are right: a machine may make two strings at once.
 */
export async function spoolsForRecipe(
  tx: Tx,
  recipe: RecipeRecord,
  spools: readonly SpoolRecord[],
): Promise<string[]> {
  const wireIds = [...new Set([recipe.body.coreWireId, ...recipe.body.wrapWireIds])];
  for (const spool of spools) {
    if (!wireIds.includes(spool.body.wireId)) await refuseWire(tx, spool, wireIds);
  }
  const inOrder = wireIds.map((wireId) => spools.filter(({ body }) => body.wireId === wireId));
  const missing = wireIds.find((_, index) => inOrder[index]?.length === 0);
  if (missing !== undefined) {
    const wire = await needRecord(tx, 'wire', missing);
    refuse({ code: 'run.spool-missing', wireId: missing, wireName: wire.body.name });
  }
  return inOrder.flat().map(({ id }) => id);
}

/** Refuses a spool whose wire is not among those wanted, and names them. */
export async function refuseWire(tx: Tx, spool: SpoolRecord, wanted: readonly string[]): Promise<never> {
  const wire = await needRecord(tx, 'wire', spool.body.wireId);
  const names: string[] = [];
  for (const id of wanted) names.push((await needRecord(tx, 'wire', id)).body.name);
  return refuse({
    code: 'run.spool-of-other-wire',
    spoolId: spool.id,
    spoolName: spool.body.name,
    wireName: wire.body.name,
    wantedNames: names,
  });
}
