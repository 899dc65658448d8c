import type { QualityRunView } from '../../contract/index.js';
import { type StringRead, stringsRead } from '../../core/quality/index.js';
import { meanOf, spreadOf } from '../../core/stats/index.js';
import type { Measurement, ReadTransaction, TrialString } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { type Wanted, wantedOfRun } from './wanted-of-run.js';

const PAGE = 500;

/** One run, down to each of its strings and every spool that went into it. */
export async function qualityRunSeen(
  tx: ReadTransaction,
  { runId }: { readonly runId: string },
): Promise<QualityRunView> {
  const { body: run, createdAt } = await needRecord(tx, 'run', runId);
  const machine = await needRecord(tx, 'machine', run.machineId);
  const recipe = await needRecord(tx, 'recipe', run.recipeId);
  const { recipeId, recipeVersion } = run;
  const wanted = (await wantedOfRun(tx, [{ recipeId, recipeVersion }]))({ recipeId, recipeVersion });
  const trials = await tx.readings.trialStrings(runId);
  const numbers = new Map(trials.map(({ id, number }) => [id, number]));
  const byId = new Map(trials.map((trial) => [trial.id, trial]));
  const read = stringsRead(await measurementsOf(tx, runId), numbers);
  return {
    runId,
    name: run.name,
    machine: { id: machine.id, name: machine.body.name },
    recipe: { id: recipe.id, name: recipe.body.name },
    at: run.startedAt ?? createdAt,
    good: run.goodCount,
    scrap: run.scrapCount,
    spools: await spoolsOf(tx, runId),
    strings: read.map((string) => ({
      ...trialOf(byId.get(string.own[0]!.trialStringId ?? '')),
      ...figuresOf(string, wanted, run.spec.lengthM),
    })),
  };
}

async function measurementsOf(tx: ReadTransaction, runId: string): Promise<readonly Measurement[]> {
  const rows: Measurement[] = [];
  let after: string | undefined;
  do {
    const page = await tx.readings.measurements({ runId, limit: PAGE, ...(after ? { after } : {}) });
    rows.push(...page.items);
    after = page.next;
  } while (after !== undefined);
  return rows;
}

async function spoolsOf(tx: ReadTransaction, runId: string): Promise<QualityRunView['spools']> {
  const [facts] = await tx.quality.runs({ runId });
  const spools: QualityRunView['spools'] = [];
  for (const spoolId of facts?.spoolIds ?? []) {
    const spool = await needRecord(tx, 'spool', spoolId);
    const { name, wireId, lot } = spool.body;
    spools.push({ id: spoolId, name, wireId, wire: (await needRecord(tx, 'wire', wireId)).body.name, lot });
  }
  return spools;
}

const trialOf = (trial: TrialString | undefined) =>
  trial ? { number: trial.number, position: trial.position, verdict: trial.verdict } : {};

function figuresOf(
  { own, instrument, isLargest, placesM, massKg }: StringRead,
  wanted: Wanted | undefined,
  lengthM: number,
): Pick<QualityRunView['strings'][number], 'at' | 'instrument' | 'offM' | 'alongM' | 'weightOff'> {
  const expectedM = isLargest ? wanted?.largestDiameterM : wanted?.meanDiameterM;
  return {
    at: own[0]!.at,
    instrument,
    ...(expectedM === undefined || placesM.length === 0 ? {} : { offM: meanOf(placesM) - expectedM }),
    ...(placesM.length < 2 ? {} : { alongM: spreadOf(placesM) }),
    ...(massKg === undefined || !wanted
      ? {}
      : { weightOff: massKg / (wanted.unitWeightKgPerM * lengthM) - 1 }),
  };
}
