import { recordEndChecks as definition, type InputOf } from '../../contract/index.js';
import { fail, invariant, succeed } from '../../core/foundation/index.js';
import { stringBody } from '../../core/string/index.js';
import { type EndCheck, impossibleReading, pullTest } from '../../core/winding/index.js';
import type { EndCheckRecord, ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { RunRecord } from '../stock/live-runs.js';
import { useCase } from '../use-case.js';
import { recipeOfRun } from './recipe-of-run.js';

type Row = InputOf<typeof definition>['rows'][number];
type Tx = Pick<ReadTransaction, 'records' | 'readings'>;

/** Writes down what was found of ends, all or none. Each is of a run: of its strings, or of the cores of its strings. */
export const recordEndChecks = useCase(definition, async ({ tx, actor, now }, { rows }) => {
  const written: EndCheckRecord[] = [];
  for (const row of rows) {
    const run = await needRecord(tx, 'run', row.runId);
    if (isEmpty(row) && row.insteadOf === undefined) return fail({ code: 'end-check.empty' });
    if (row.insteadOf !== undefined) await refuseStray(tx, run, row.insteadOf);
    written.push({ ...(await recordOf(tx, run, row)), at: now, by: actor.by });
  }
  await tx.readings.addEndChecks(written);
  return succeed({ written: rows.length });
});

const isEmpty = ({ lengthM, twists, tailM, seat, pull }: EndCheck): boolean =>
  [lengthM, twists, tailM, seat, pull].every((each) => each === undefined);

async function recordOf(tx: Tx, run: RunRecord, row: Row): Promise<Omit<EndCheckRecord, 'at' | 'by'>> {
  const { id, runId, spoolId: named, insteadOf = null, gauge = '', machineId: _, ...checked } = row;
  const machineId = await benchOf(tx, run, row);
  const recipe = await recipeOfRun(tx, run);
  const { coreWireId: wireId } = recipe.body;
  const spoolId = named ?? mountedOn(run, machineId);
  const certifiedPa = spoolId === undefined ? undefined : await certifiedStrength(tx, spoolId, wireId);
  const pull = strengthOf(recipe.body.construction, certifiedPa);
  const impossible = impossibleReading(checked, {
    lengthM: run.body.spec.lengthM,
    ...(pull && { leastBreakingN: pull.leastBreakingN }),
  });
  if (impossible) refuse({ ...impossible });
  return {
    id,
    runId,
    machineId,
    wireId,
    spoolId: spoolId ?? null,
    end: run.body.spec.end,
    ...checked,
    leastBreakingN: pull?.leastBreakingN ?? null,
    strengthFrom: pull?.strengthFrom ?? null,
    gauge,
    insteadOf,
  };
}

/** Where the end was made: the bench that is named, else the run's own machine. */
async function benchOf(tx: Tx, run: RunRecord, { machineId = run.body.machineId }: Row): Promise<string> {
  const { id, body } = await needRecord(tx, 'machine', machineId);
  if (body.kind !== 'bench') refuse({ code: 'end-check.not-a-bench', machineId: id, machineName: body.name });
  return id;
}

/** Of a plain string's run the spool that lies on the bench. A core's may have been cut long before. */
const mountedOn = ({ body }: RunRecord, machineId: string): string | undefined =>
  body.machineId === machineId ? body.spoolIds[0] : undefined;

async function certifiedStrength(tx: Tx, spoolId: string, wireId: string): Promise<number | undefined> {
  const spool = await needRecord(tx, 'spool', spoolId);
  if (spool.body.wireId !== wireId) {
    const wire = await needRecord(tx, 'wire', spool.body.wireId);
    const wanted = await needRecord(tx, 'wire', wireId);
    refuse({
      code: 'run.spool-of-other-wire',
      spoolId,
      spoolName: spool.body.name,
      wireName: wire.body.name,
      wantedNames: [wanted.body.name],
    });
  }
  return spool.body.certificate?.tensilePa;
}

/** What its wire bears at least: by the spool's certificate, else by what the recipe says of the wire. */
function strengthOf(
  construction: Parameters<typeof stringBody>[0],
  certifiedPa: number | undefined,
): ReturnType<typeof pullTest> {
  const certified = certifiedPa === undefined ? {} : { certifiedStrengthPa: certifiedPa };
  const known =
    construction.kind === 'plain'
      ? { ...construction, wire: { ...construction.wire, ...certified } }
      : { ...construction, core: { ...construction.core, ...certified } };
  const body = stringBody(known);
  invariant(body.ok, 'a recipe that runs makes a string');
  return pullTest(known.kind === 'plain' ? known.wire : known.core, body.value);
}

async function refuseStray(tx: Tx, run: RunRecord, insteadOf: string): Promise<void> {
  let after: string | undefined;
  do {
    const page = await tx.readings.endChecks({
      runId: run.id,
      limit: 500,
      ...(after === undefined ? {} : { after }),
    });
    if (page.items.some(({ id }) => id === insteadOf)) return;
    after = page.next;
  } while (after !== undefined);
  refuse({ code: 'record.missing', kind: 'end-check', id: insteadOf });
}
