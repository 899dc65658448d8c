import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { grouped } from '../../core/foundation/index.js';
import type { Recipe } from '../../core/recipes/index.js';
import {
  type ChangeKind,
  changeKind,
  changeOver,
  type Machine,
  type PastSetUp,
  type SetUpTraits,
  traitsOf,
} from '../../core/winding/index.js';
import type { ReadTransaction, SetUpReadings } from '../../store/index.js';

type Run = StoredRecord<BodyOf<'run'>>;

/** Older set-ups tell of another shop: other hands, other gears. So many runs, over all machines; a choice of ours. */
const RUNS_LOOKED_AT = 600;
const PAGE = 500;
/** Between a start and a release that lie further apart there was a pause or a night. A choice of ours. */
const LONGEST_MINUTES = 240;

/** What set-ups are told by: machines and recipes as they stand now, by the ids of their records. */
export interface SetUpNames {
  readonly machineOf: (id: string) => Machine | undefined;
  readonly recipeOf: (id: string) => Recipe | undefined;
}

/** A set-up with what was scrapped in the whole run, by cause. `machineId` is that of the record. */
export interface SetUpSeen extends PastSetUp {
  /** By the winder's word; what was scrapped until the release apart. */
  readonly scrapByCause: readonly {
    readonly reason: string;
    readonly count: number;
    readonly isInSetUp: boolean;
  }[];
}

/**
 * The set-ups of the shop's last runs: what each was changed from is the run begun before it on its machine. Its scrap are the trial
 * strings that were judged scrap, and what was counted as scrap until it was let run; that is when the last trial string was wound
 * or measured, or the first strings were counted. Runs without trial strings tell nothing, nor do runs that are not closed.
 */
export async function pastSetUps(tx: ReadTransaction, names: SetUpNames): Promise<readonly SetUpSeen[]> {
  const begun = await begunRuns(tx);
  const changed = [...grouped(begun, ({ body }) => body.machineId).values()].flatMap((lane) =>
    changesOf(lane, names),
  );
  const told = new Map(
    (await tx.readings.setUpReadings(changed.map(({ run }) => run.id))).map((row) => [row.runId, row]),
  );
  return changed.flatMap(({ run, ...change }) => {
    const readings = told.get(run.id);
    return readings ? [{ machineId: run.body.machineId, ...change, ...scrapAndTime(run, readings) }] : [];
  });
}

/** The newest, by when they were begun. */
async function begunRuns({ records }: ReadTransaction): Promise<readonly Run[]> {
  const runs: Run[] = [];
  let after: string | undefined;
  do {
    const page = await records.list('run', { limit: PAGE, ...(after === undefined ? {} : { after }) });
    runs.push(...page.items.filter(({ body }) => body.startedAt !== undefined));
    after = page.next;
  } while (after !== undefined && runs.length < RUNS_LOOKED_AT);
  return runs
    .slice(0, RUNS_LOOKED_AT)
    .sort((a, b) => ((a.body.startedAt ?? '') < (b.body.startedAt ?? '') ? -1 : 1));
}

interface Change {
  readonly run: Run;
  readonly kind: ChangeKind;
  readonly figureScrap: number;
  readonly figureMinutes: number;
}

/** The closed runs of a machine with what was changed before each; of the first nobody knows. */
function changesOf(lane: readonly Run[], { machineOf, recipeOf }: SetUpNames): readonly Change[] {
  const traits = (run: Run): SetUpTraits | undefined => {
    const recipe = recipeOf(run.body.recipeId);
    return recipe && traitsOf(recipe, run.body.spec.lengthM);
  };
  return lane.flatMap((run, at) => {
    const before = lane[at - 1];
    const machine = machineOf(run.body.machineId);
    const from = before && traits(before);
    const to = traits(run);
    if (run.state !== 'closed' || !machine || !from || !to) return [];
    // By the machine's own figures: what was learned before must not be learned from.
    const { changeLearned: _, ...own } = machine;
    const { minutes, scrapStrings, changes } = changeOver(own, from, to);
    const kind = changeKind(changes);
    return kind ? [{ run, kind, figureScrap: scrapStrings, figureMinutes: minutes }] : [];
  });
}

/** As the count step words trial strings that were scrapped. */
const DIALLING_IN = 'dialling in';

function scrapAndTime(
  { body: { startedAt = '' } }: Run,
  { scrapped, lastTriedAt, lastReadAt, counted }: SetUpReadings,
): Pick<SetUpSeen, 'scrap' | 'minutes' | 'scrapByCause'> {
  const lastSeen = lastReadAt !== null && lastReadAt > lastTriedAt ? lastReadAt : lastTriedAt;
  const firstGood = counted.find(({ outcome }) => outcome === 'good')?.at;
  const releasedAt = firstGood !== undefined && firstGood < lastSeen ? firstGood : lastSeen;
  const minutes = (Date.parse(releasedAt) - Date.parse(startedAt)) / 60_000;
  const thrown = counted
    .filter(({ outcome }) => outcome === 'scrap')
    .map(({ reason, count, at }) => ({ reason, count, isInSetUp: at <= releasedAt }));
  const inSetUp = thrown.reduce((sum, { count, isInSetUp }) => sum + (isInSetUp ? count : 0), 0);
  return {
    scrap: scrapped + inSetUp,
    ...(minutes > 0 && minutes <= LONGEST_MINUTES ? { minutes } : {}),
    scrapByCause: [
      ...(scrapped > 0 ? [{ reason: DIALLING_IN, count: scrapped, isInSetUp: true }] : []),
      ...thrown,
    ],
  };
}
