import type { QualityQuery, QualityView } from '../../contract/index.js';
import { addDays, byText, type CalendarDate, grouped } from '../../core/foundation/index.js';
import {
  comparedGroups,
  firstPass,
  handsShare,
  type RunSeen,
  type RunValue,
  runningCapability,
  runSeries,
  scrapReasons,
  valuesOf,
} from '../../core/quality/index.js';
import { USUAL_TOLERANCE_M } from '../../core/recipes/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { readLotName } from '../calibration/lot-name.js';
import type { Actor } from '../use-case.js';
import { findingsSeen, YEAR_DAYS } from './findings-seen.js';
import { runsSeen } from './runs-seen.js';

export interface QualityAsker {
  readonly actor: Pick<Actor, 'personId'>;
  readonly now: string;
}

/** The quality room: what the numbers say of the year, and the runs of a period by what one asks for. */
export async function qualitySeen(
  tx: ReadTransaction,
  query: QualityQuery,
  { actor, now }: QualityAsker,
): Promise<QualityView> {
  const until = (query.until as CalendarDate | undefined) ?? (now.slice(0, 10) as CalendarDate);
  const from = (query.from as CalendarDate | undefined) ?? addDays(until, -YEAR_DAYS);
  const yearFrom = addDays(until, -YEAR_DAYS);
  const before = addDays(until, 1);
  const [since = from] = [from, yearFrom].sort();
  const loaded = await runsSeen(tx, { since, before });
  const period = loaded.filter(({ at }) => at >= from);
  const runs = period.filter(isAsked(query, actor.personId));
  const { measure = 'first', by = 'machine', instrument } = query;
  const values = valuesOf(runs, measure, instrument);
  const running = valuesOf(runs, 'running', instrument);
  const scrap = await tx.quality.scrap({ since: from, before });
  const capability = runningCapability(runs, USUAL_TOLERANCE_M, instrument);
  const right = firstPass(runs, scrap);
  const hands = query.mine ? undefined : handsShare(running);
  return {
    at: now,
    from,
    until,
    toleranceM: USUAL_TOLERANCE_M,
    measure,
    by,
    runs: runs.length,
    readings: runs.reduce((sum, run) => sum + run.readings, 0),
    findings: await findingsSeen(
      tx,
      loaded.filter(({ at }) => at >= yearFrom),
      yearFrom,
    ),
    series: runSeries(values, measure) as QualityView['series'],
    ...(capability ? { capability } : {}),
    groups: comparedGroups(comparedBy(period, query, actor.personId), by) as QualityView['groups'],
    ...(right ? { firstPass: right } : {}),
    scrap: scrapReasons(runs, scrap) as QualityView['scrap'],
    ...(hands ? { hands } : {}),
    choices: await choicesOf(tx, period),
  };
}

/** What is compared by machine, say, is not narrowed to one machine: there would be nothing to compare it with. */
function comparedBy(
  period: readonly RunSeen[],
  query: QualityQuery,
  personId: string | undefined,
): readonly RunValue[] {
  const { by = 'machine', measure = 'first' } = query;
  const others: QualityQuery = { ...query };
  delete others[FIELD[by]];
  return valuesOf(period.filter(isAsked(others, personId)), measure, others.instrument);
}

const FIELD = { machine: 'machineId', recipe: 'recipeId', lot: 'lot', instrument: 'instrument' } as const;

const isAsked =
  ({ machineId, recipeId, lot, instrument, mine }: QualityQuery, personId: string | undefined) =>
  (run: RunSeen): boolean =>
    (machineId === undefined || run.machineId === machineId) &&
    (recipeId === undefined || run.recipeId === recipeId) &&
    (lot === undefined || run.lots.includes(lot)) &&
    (instrument === undefined || run.parts.some((part) => part.instrument === instrument)) &&
    (mine === undefined || (personId !== undefined && run.winderId === personId));

/** What there is to choose from among the runs of the period. */
async function choicesOf(tx: ReadTransaction, runs: readonly RunSeen[]): Promise<QualityView['choices']> {
  const nameOf = async (kind: 'machine' | 'recipe' | 'wire') =>
    new Map((await tx.records.all(kind)).map(({ id, body }) => [id, body.name]));
  const wires = await nameOf('wire');
  const lotNamed = (lot: string): string => {
    const named = readLotName(lot);
    return `${wires.get(named.wireId) ?? named.wireId}, ${named.lot}`;
  };
  const machines = await nameOf('machine');
  const recipes = await nameOf('recipe');
  return {
    machines: named([...grouped(runs, ({ machineId }) => machineId).keys()], (id) => machines.get(id) ?? id),
    recipes: named([...grouped(runs, ({ recipeId }) => recipeId).keys()], (id) => recipes.get(id) ?? id),
    lots: named([...new Set(runs.flatMap(({ lots }) => lots))], lotNamed),
    instruments: [
      ...new Set(
        runs.flatMap(({ parts }) =>
          parts.filter(({ strings }) => strings > 0).map((part) => part.instrument),
        ),
      ),
    ].sort(byText),
  };
}

const named = (ids: readonly string[], nameOf: (id: string) => string) =>
  ids.map((id) => ({ id, name: nameOf(id) })).sort((a, b) => byText(a.name, b.name));
