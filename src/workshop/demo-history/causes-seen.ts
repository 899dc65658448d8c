import type { PlantedCauses } from '../../../demo/index.js';
import { type CalendarDate, daysBetween } from '../../core/foundation/index.js';
import { stringBody } from '../../core/string/index.js';
import type { Measurement, ReadTransaction } from '../../store/index.js';

/** A figure from the records and its standard error. */
export interface Seen {
  readonly value: number;
  readonly u: number;
}

/** What the measurements alone say of the planted causes, by plain statistics: means, spreads, a straight line. */
export interface CausesSeen {
  /** Growth of what the worn machine's first strings of a run are off the sheet, m a day. */
  readonly wearMPerDay: Seen;
  /** The same of all other winding machines. */
  readonly othersMPerDay: Seen;
  /** How much more the micrometer shows since its day than before, m, against what the others do. */
  readonly micrometerM: Seen;
  /** Standard deviation along a string of wire of the bad lot, and of other wound strings, m. */
  readonly spreadM: { readonly bad: number; readonly others: number; readonly strings: number };
  /** How much further off their recipes' weight strings of the bad lot are than others, as a share. */
  readonly massShare: Seen;
}

/** A measured string: where and when it was made, and its readings less what its recipe says. */
interface MeasuredString {
  readonly runId: string;
  readonly machine: string;
  readonly date: CalendarDate;
  readonly instrument: string;
  readonly isFirstTrial: boolean;
  readonly isWound: boolean;
  readonly isOfBadLot: boolean;
  readonly meanOffM: number;
  /** Variance between places, both rotations of each averaged. */
  readonly alongM2: number;
  /** What it weighs against what its recipe says, as a share. */
  readonly massOffShare: number | undefined;
}

export async function causesSeen(tx: ReadTransaction, causes: PlantedCauses): Promise<CausesSeen> {
  const strings = (await measuredStrings(tx, causes)).filter(({ isWound }) => isWound);
  // Before anybody turns the dial by what a reading says, and so hides half of what is wrong with it.
  const firsts = strings.filter(({ isFirstTrial, isOfBadLot }) => isFirstTrial && !isOfBadLot);
  const truly = firsts.filter(({ instrument }) => instrument !== causes.micrometer.instrument);
  const isWorn = ({ machine }: MeasuredString) => machine.startsWith(causes.wear.machine);
  const bad = strings.filter(({ isOfBadLot }) => isOfBadLot);
  const others = strings.filter(({ isOfBadLot }) => !isOfBadLot);
  return {
    wearMPerDay: slope(truly.filter(isWorn), causes.wear.from),
    othersMPerDay: slope(
      truly.filter((string) => !isWorn(string)),
      causes.wear.from,
    ),
    micrometerM: micrometerStep(
      firsts.filter((string) => !isWorn(string)),
      causes.micrometer,
    ),
    spreadM: { bad: rootMean(bad), others: rootMean(others), strings: bad.length },
    massShare: difference(massOffs(bad), massOffs(others)),
  };
}

function micrometerStep(
  strings: readonly MeasuredString[],
  { instrument, from }: PlantedCauses['micrometer'],
): Seen {
  const offOf = (isIt: boolean, isAfter: boolean) =>
    mean(
      strings
        .filter((string) => (string.instrument === instrument) === isIt && string.date >= from === isAfter)
        .map(({ meanOffM }) => meanOffM),
    );
  const parts = [offOf(true, true), offOf(true, false), offOf(false, true), offOf(false, false)] as const;
  const [itAfter, itBefore, othersAfter, othersBefore] = parts;
  return {
    value: itAfter.value - itBefore.value - (othersAfter.value - othersBefore.value),
    u: Math.hypot(...parts.map(({ u }) => u)),
  };
}

const rootMean = (strings: readonly MeasuredString[]): number =>
  Math.sqrt(strings.reduce((sum, { alongM2 }) => sum + alongM2, 0) / strings.length);

const massOffs = (strings: readonly MeasuredString[]): Seen =>
  mean(strings.flatMap(({ massOffShare }) => massOffShare ?? []));

const difference = (one: Seen, other: Seen): Seen => ({
  value: one.value - other.value,
  u: Math.hypot(one.u, other.u),
});

function mean(values: readonly number[]): Seen {
  const value = values.reduce((sum, each) => sum + each, 0) / values.length;
  const variance = values.reduce((sum, each) => sum + (each - value) ** 2, 0) / (values.length - 1);
  return { value, u: Math.sqrt(variance / values.length) };
}

/** A straight line by least squares through the offs against days. */
function slope(strings: readonly MeasuredString[], from: CalendarDate): Seen {
  const points = strings.map(({ date, meanOffM }) => ({ x: daysBetween(from, date), y: meanOffM }));
  const middle = { x: mean(points.map(({ x }) => x)).value, y: mean(points.map(({ y }) => y)).value };
  const squares = points.reduce((sum, { x }) => sum + (x - middle.x) ** 2, 0);
  const value = points.reduce((sum, { x, y }) => sum + (x - middle.x) * (y - middle.y), 0) / squares;
  const rest = points.reduce((sum, { x, y }) => sum + (y - middle.y - value * (x - middle.x)) ** 2, 0);
  return { value, u: Math.sqrt(rest / (points.length - 2) / squares) };
}

async function measuredStrings(
  tx: ReadTransaction,
  { badLot }: PlantedCauses,
): Promise<readonly MeasuredString[]> {
  const machines = new Map((await tx.records.all('machine')).map(({ id, body }) => [id, body.name]));
  const recipes = new Map((await tx.records.all('recipe')).map((recipe) => [recipe.id, recipe.body]));
  const badSpools = new Set((await tx.records.all('spool', { lot: badLot.lot })).map(({ id }) => id));
  const badRuns = new Set(
    (await tx.records.all('string-lot')).flatMap(({ body }) =>
      body.spoolIds.some((id) => badSpools.has(id)) ? (body.runId ?? []) : [],
    ),
  );
  const strings: MeasuredString[] = [];
  for (const { id: runId, body } of await tx.records.all('run')) {
    const recipe = recipes.get(body.recipeId);
    const made = recipe && stringBody(recipe.construction);
    if (!made?.ok) continue;
    const { items } = await tx.readings.measurements({ runId, limit: 500 });
    const trials = await tx.readings.trialStrings(runId);
    const first = trials.find(({ number }) => number === 1)?.id;
    for (const of of new Set(items.map(({ trialStringId }) => trialStringId))) {
      const own = items.filter(({ trialStringId }) => trialStringId === of);
      const read = own.filter(({ quantity }) => quantity === 'diameter');
      const places = placesOf(read);
      const at = read[0];
      if (!at) continue;
      const off = mean(places);
      const massKg = own.find(({ quantity }) => quantity === 'mass')?.value;
      strings.push({
        runId,
        machine: (machines.get(body.machineId) ?? '').toLowerCase().replaceAll(' ', '-'),
        date: at.at.slice(0, 10) as CalendarDate,
        instrument: at.instrument,
        isFirstTrial: of !== null && of === first,
        isWound: body.spec.kind === 'wound',
        isOfBadLot: badRuns.has(runId),
        meanOffM: off.value - made.value.meanDiameterM,
        alongM2: off.u ** 2 * places.length,
        massOffShare: massKg && massKg / (made.value.linearDensityKgPerM * body.spec.lengthM) - 1,
      });
    }
  }
  return strings;
}

/** The mean reading at each place, m. */
function placesOf(readings: readonly Measurement[]): readonly number[] {
  return [...new Set(readings.map(({ placeM }) => placeM))].map(
    (place) => mean(readings.filter(({ placeM }) => placeM === place).map(({ value }) => value)).value,
  );
}
