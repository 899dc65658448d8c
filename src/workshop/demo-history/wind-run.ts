import {
  checkStrings,
  countOf,
  diameterReadingM,
  MEASURED_AT,
  massReadingKg,
  micrometerAt,
  normal,
  placeM,
  SCALE,
  type StringsChecked,
  type StringTruth,
  WINDER_AT,
  windString,
} from '../../../demo/index.js';
import type { InputOf } from '../../contract/index.js';
import { addDays } from '../../core/foundation/index.js';
import { CAUTIONS_EDITION, cautionsFor } from '../../core/winding/index.js';
import { acknowledgeCautions } from '../production/acknowledge-cautions.js';
import { changeSpool } from '../production/change-spool.js';
import { closeRun } from '../production/close-run.js';
import { planRun } from '../production/plan-run.js';
import { recordMeasurements } from '../production/record-measurements.js';
import { recordTally } from '../production/record-tally.js';
import { recordRunSettings } from '../production/run-settings.js';
import { startRun } from '../production/start-run.js';
import { judgeTrialString, recordTrialString } from '../production/trial-strings.js';
import type { Act, HistoryDay, InHand } from './act.js';
import type { RunToWind } from './choose-runs.js';
import { checkEnds } from './end-checks.js';
import { type HistoryBook, keepLot } from './history-book.js';
import { tryRecipe } from './recipe-trials.js';
import { settingsWrittenDown } from './settings-written-down.js';
import { spoolsAtClose, spoolsBack, takeFromSpools, useUpRemnants } from './spools-of-run.js';

/** A run as it goes on: what its acts hand on to one another. */
export interface RunInHand {
  readonly run: RunToWind;
  readonly runId: string;
  name: string;
  version: number;
  /** How far the machine is set off what the sheet says, as it shows in the diameter, m. */
  settingM: number;
  trials: number;
  trialsScrapped: number;
  /** What the winder's check of the running strings says, m off the sheet. */
  checkedOffM: number;
  /** A trial string was measured by the micrometer that reads too much. */
  measuredLarge: boolean;
}

/** Beyond this the winder turns the dial; what he leaves alone below it. Invented. */
const LEFT_ALONE_M = 12e-6;
const TOLERANCE_M = 19e-6;
const DOUBT_M = 15e-6;
/** How well a machine is set from its sheet, and how much of a correction it takes on. Invented. */
const SET_UP_M = 6e-6;
const RESPONSE: Readonly<Record<string, number>> = {
  wren: 0.95,
  'twin-finch': 0.9,
  'old-heron': 0.7,
  'two-herons': 0.75,
};
const WEIGHED_SHARE = 0.25;

/** A run that was planned already. */
export interface PlannedRun {
  readonly id: string;
  readonly version: number;
  readonly name: string;
}

/** A run before anybody laid a hand on it. */
export const runInHand = (
  { chance, newId }: HistoryBook,
  run: RunToWind,
  planned?: PlannedRun,
): RunInHand => ({
  run,
  runId: planned?.id ?? newId(),
  name: planned?.name ?? '',
  version: planned?.version ?? 1,
  settingM: normal(chance, SET_UP_M),
  trials: 0,
  trialsScrapped: 0,
  checkedOffM: 0,
  measuredLarge: false,
});

/** Everything that is done for a run, from the owner's word to the close. Times are minutes of the day. */
export function actsOfRun(day: HistoryDay, run: RunToWind, startMinute: number): readonly Act[] {
  const hand = runInHand(day.book, run);
  return [
    { minute: 451, by: 'owner', work: (shop) => plan(shop, day, hand) },
    ...actsAtMachine(day, hand, startMinute),
  ];
}

/** What its winder does for a run, from the spools to the close. */
export function actsAtMachine(day: HistoryDay, hand: RunInHand, startMinute: number): readonly Act[] {
  const begun = actsOfBeginning(day, hand, startMinute);
  const { minute: checked = startMinute, by = 'servoWinder' } = begun.at(-1) ?? {};
  return [
    ...begun,
    { minute: checked + windMinutes(hand.run) / 2, by, work: (shop) => close(shop, day, hand) },
  ];
}

/** A run is set up, tried and in full swing: half of its strings are wound. */
export function actsOfBeginning(day: HistoryDay, hand: RunInHand, startMinute: number): readonly Act[] {
  const { run } = hand;
  const by = WINDER_AT[run.machine] ?? 'servoWinder';
  const isWound = run.spec.kind === 'wound';
  const trials = isWound ? 2 : 0;
  const setUp = isWound ? 24 : 8;
  const at = (minute: number, work: Act['work']): Act => ({ minute, by, work });
  return [
    at(startMinute, (shop) => start(shop, day.book, hand)),
    ...(isWound && !hasCoresChecked(day.book)
      ? []
      : [at(startMinute + 1, (shop: InHand) => checkEnds(shop, day, hand))]),
    ...Array.from({ length: trials }, (_, trial) =>
      at(startMinute + setUp + 7 * trial, (shop) => tryString(shop, day, hand)),
    ),
    ...(isWound ? [at(startMinute + setUp + 13, (shop) => writeSettings(shop, hand))] : []),
    at(startMinute + setUp + 14 + windMinutes(run) / 2, (shop) => check(shop, day, hand)),
  ];
}

/** Of every so many wound runs the cores' ends are looked at. Invented. */
const CORES_CHECKED_IN = 3;

const hasCoresChecked = ({ ends }: HistoryBook): boolean => ++ends.coresOfRuns % CORES_CHECKED_IN === 0;

const windMinutes = ({ quantity, work }: RunToWind): number =>
  (quantity * work.cycleSeconds) / work.positions / 60 + 0.5 * quantity;

async function plan(shop: InHand, { book, date }: HistoryDay, hand: RunInHand): Promise<void> {
  const { run, runId } = hand;
  const { recipe, machine, spec, quantity } = run;
  const recipeId = book.ids.recipe(recipe.id);
  await tryRecipe(shop, book, recipeId);
  hand.name = `${date} run ${++book.count.runsToday}`;
  const machineId = book.ids.machine(machine);
  await shop.ask(planRun, { id: runId, name: hand.name, recipeId, machineId, spec, quantity });
}

async function start(shop: InHand, book: HistoryBook, hand: RunInHand): Promise<void> {
  const { ask } = shop;
  await readCautions(shop, book, hand.run);
  const spoolIds = hand.run.spools.map(({ first }) => first.id);
  const started = await ask(startRun, { runId: hand.runId, expectedVersion: hand.version, spoolIds });
  hand.version = started.version;
  for (const { first } of hand.run.spools) first.machine = hand.run.machine;
}

/** Each winder works at machines of their own, and reads what is new there before the run. */
async function readCautions({ ask }: InHand, book: HistoryBook, { machine, work }: RunToWind): Promise<void> {
  const cautions = cautionsFor(work.construction);
  const known = book.cautionsRead.get(machine) ?? [];
  if (cautions.every((caution) => known.includes(caution))) return;
  book.cautionsRead.set(machine, [...known, ...cautions]);
  await ask(acknowledgeCautions, {
    id: book.newId(),
    machineId: book.ids.machine(machine),
    cautions: [...cautions],
    edition: CAUTIONS_EDITION,
  });
}

/** A trial string: wound, measured, judged; and where it is far off, the dial is turned by what the reading says. */
async function tryString(shop: InHand, day: HistoryDay, hand: RunInHand): Promise<void> {
  const { ask } = shop;
  const { book } = day;
  const number = ++hand.trials;
  const position = hand.run.work.positions === 2 && number % 2 === 0 ? 2 : 1;
  const { id } = await ask(recordTrialString, { id: book.newId(), runId: hand.runId, number, position });
  const offM = await measure(shop, day, hand, { position, trialStringId: id });
  const verdict = Math.abs(offM) <= TOLERANCE_M && book.chance.next() > 0.1 ? 'good' : 'scrap';
  if (verdict === 'scrap') hand.trialsScrapped++;
  await ask(judgeTrialString, { trialStringId: id, runId: hand.runId, verdict });
  if (Math.abs(offM) > LEFT_ALONE_M) hand.settingM -= offM * (RESPONSE[hand.run.machine] ?? 1);
}

/** Some winders write down what the machine is set to. From chance of its own, so that all else goes as it would. */
async function writeSettings({ ask }: InHand, hand: RunInHand): Promise<void> {
  const settings = settingsWrittenDown(hand.run, hand.name);
  if (!settings) return;
  const { version } = await ask(recordRunSettings, {
    runId: hand.runId,
    expectedVersion: hand.version,
    ...settings,
  });
  hand.version = version;
}

/** One of the running strings, measured and weighed. */
async function check(shop: InHand, day: HistoryDay, hand: RunInHand): Promise<void> {
  const { work } = hand.run;
  hand.checkedOffM = await measure(shop, day, hand, { position: day.book.chance.whole(1, work.positions) });
}

type Measuring = InputOf<(typeof recordMeasurements)['definition']>['rows'];

/** Measures a string that is wound for it, and gives how far its mean is off the sheet, m. */
async function measure(
  { ask }: InHand,
  day: HistoryDay,
  hand: RunInHand,
  { position, trialStringId }: { readonly position: number; readonly trialStringId?: string },
): Promise<number> {
  const { book, date } = day;
  const { chance, causes } = book;
  const { run, runId } = hand;
  const string = stringOf(day, hand, position);
  const instrument = micrometerAt(run.machine, chance);
  const of = { runId, ...(trialStringId === undefined ? {} : { trialStringId }) };
  const readings = MEASURED_AT.map((where) =>
    diameterReadingM(string, where, { instrument, date, large: causes.micrometer, chance }),
  );
  const rows: Measuring = MEASURED_AT.map(({ place, rotationDeg }, at) => ({
    id: book.newId(),
    ...of,
    quantity: 'diameter',
    value: readings[at] ?? 0,
    placeM: placeM(place, run.spec.lengthM),
    rotationDeg,
    instrument,
  }));
  const { instrument: large, from } = causes.micrometer;
  if (trialStringId !== undefined && instrument === large && date >= from) hand.measuredLarge = true;
  const massKg = massReadingKg(string, chance);
  if (trialStringId === undefined)
    rows.push({ id: book.newId(), ...of, quantity: 'mass', value: massKg, instrument: SCALE });
  await ask(recordMeasurements, { rows });
  return readings.reduce((sum, each) => sum + each, 0) / readings.length - run.work.body.meanDiameterM;
}

function stringOf({ book, date }: HistoryDay, { run, settingM }: RunInHand, position: number): StringTruth {
  const { work, spec, machine, recipe } = run;
  const lotOf = (wire: string) => run.spools.find((each) => each.wire === wire)?.first.lot ?? '';
  const lots = [recipe.coreWireId, ...recipe.wrapWireIds].map(lotOf);
  const { construction } = work;
  const { lengthM } = spec;
  return windString(
    { construction, lengthM, machine, position, date, lots, settingM },
    book.causes,
    book.chance,
  );
}

async function close(shop: InHand, day: HistoryDay, hand: RunInHand): Promise<void> {
  const { ask } = shop;
  const { book, date } = day;
  const { run, runId, trialsScrapped, checkedOffM } = hand;
  const { machine, quantity, spec, stringKey } = run;
  const wireLots = run.spools.flatMap(({ first, second }) =>
    second ? [first.lot, second.lot] : [first.lot],
  );
  const made = { machine, isWound: spec.kind === 'wound', lots: wireLots, made: quantity };
  const checked = checkStrings(made, book.causes.badLot, book.chance);
  await tally(shop, day, hand, checked);
  const dialling = trialsScrapped > 0 ? [{ reason: 'dialling in', count: trialsScrapped }] : [];
  const scrap = [...checked.foundByWinder, ...dialling];
  for (const change of useUpRemnants(book, run)) {
    const { record } = await ask(changeSpool, { runId, expectedVersion: hand.version, ...change });
    hand.version = record.version;
  }
  takeFromSpools(book, run, checked.good + countOf(scrap));
  const lotId = book.newId();
  const binId = book.binOf(stringKey);
  const { lot, wire } = await ask(closeRun, {
    runId,
    expectedVersion: hand.version,
    lotId,
    lotName: hand.name.replace('run', 'lot'),
    binId,
    good: checked.good,
    scrap,
    spools: book.chance.next() < WEIGHED_SHARE ? spoolsAtClose(run, checked.good) : [],
  });
  spoolsBack(book, run, wire);
  if (!lot) return;
  keepLot(book, {
    id: lotId,
    name: lot.body.name,
    stringKey,
    binId,
    wireLots,
    made: { machine, date, measuredLarge: hand.measuredLarge },
    version: lot.version,
    state: 'in-check',
    left: checked.good,
    faulty: checked.escaped + countOf(checked.foundByCoiler),
    toFind: checked.foundByCoiler,
    ...(Math.abs(checkedOffM) > DOUBT_M ? { doubt: 'diameter off the sheet in the running check' } : {}),
    lookAgain: addDays(date, 1),
  });
}

async function tally(
  { ask }: InHand,
  { book }: HistoryDay,
  { runId }: RunInHand,
  { good, foundByWinder }: StringsChecked,
): Promise<void> {
  const of = { runId, station: 'winder' } as const;
  if (good > 0) await ask(recordTally, { id: book.newId(), ...of, outcome: 'good', reason: '', count: good });
  for (const { reason, count } of foundByWinder)
    await ask(recordTally, { id: book.newId(), ...of, outcome: 'scrap', reason, count });
}
