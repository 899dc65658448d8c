import type { PastRun } from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { NameIndex } from './shop-parts.js';

/** So many closed runs are looked through, the newest first, and so many of each machine are leaned on at most. */
const LOOKED_AT = 200;
const OF_A_MACHINE = 12;

/** What machines were set to in past runs whose strings were good, newest first; those that nobody wrote down are left out. */
export async function pastRuns(
  tx: ReadTransaction,
  { machine, recipe }: { readonly machine: NameIndex<'machine'>; readonly recipe: NameIndex<'recipe'> },
): Promise<readonly PastRun[]> {
  const { items } = await tx.records.list('run', { where: { state: 'closed' }, limit: LOOKED_AT });
  const counts = new Map<string, number>();
  return items.flatMap(({ id, body }): readonly PastRun[] => {
    const { settings, goodCount, name, closedAt } = body;
    const machineId = machine.nameOf(body.machineId);
    const recipeId = recipe.nameOf(body.recipeId);
    const made = recipeId === undefined ? undefined : recipe.byName.get(recipeId);
    if (!settings || goodCount === 0 || machineId === undefined || made?.body.construction.kind !== 'wound')
      return [];
    const count = counts.get(machineId) ?? 0;
    counts.set(machineId, count + 1);
    if (count >= OF_A_MACHINE) return [];
    const { core, layers } = made.body.construction;
    const lotOf = (wireId: string | undefined) => settings.lots.find((each) => each.wireId === wireId)?.lot;
    const named = (lot: string | undefined) => (lot === undefined ? {} : { lot });
    return [
      {
        machineId,
        name,
        runId: id,
        ...(closedAt === undefined ? {} : { date: closedAt.slice(0, 10) }),
        recipeId: made.body.name,
        core: {
          shape: core.shape,
          sizeM: core.sizeM,
          ...(settings.coreTensionN === undefined ? {} : { tensionN: settings.coreTensionN }),
          ...named(lotOf(made.body.coreWireId)),
        },
        layers: layers.map(({ alloy, wireDiameterM }, at) => {
          const { tensionN, spindleRpm } = settings.layers[at] ?? {};
          return {
            alloy,
            wireDiameterM,
            ...(tensionN === undefined ? {} : { tensionN }),
            ...(spindleRpm === undefined ? {} : { spindleRpm }),
            ...named(lotOf(made.body.wrapWireIds[at])),
          };
        }),
      },
    ];
  });
}
