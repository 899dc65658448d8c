import type { Static, TSchema } from 'typebox';
import type { Permission } from '../permissions.js';
import { closed } from '../schemas/pieces.js';
import {
  balanceAnswer,
  cautionReadingAnswer,
  endCheckAnswer,
  journalAnswer,
  lifeAnswer,
  measurementAnswer,
  movementAnswer,
  myCautionsAnswer,
  pageAnswer,
  tallyAnswer,
  trialStringAnswer,
  voidedEntryAnswer,
  wholeAnswer,
} from './answers.js';
import { calibrationAnswer, calibrationQuery } from './calibration.js';
import {
  complaintRegisterAnswer,
  complaintRegisterQuery,
  complaintTraceAnswer,
  complaintTraceQuery,
} from './complaints.js';
import {
  dryRoomAirAnswer,
  dryRoomAirQuery,
  lotsLyingDuringAnswer,
  lotsLyingDuringQuery,
} from './dry-room.js';
import { machineWearAnswer, machineWearQuery } from './machine-wear.js';
import { needsAnswer, needsQuery, wireCoverAnswer, wireCoverQuery } from './needs.js';
import { pastDialInAnswer, pastDialInsQuery } from './past-dial-ins.js';
import { planViewAnswer, planViewQuery } from './plan-view.js';
import { qualityAnswer, qualityQuery, qualityRunAnswer, qualityRunQuery } from './quality.js';
import {
  balancesQuery,
  cautionReadingsQuery,
  endChecksQuery,
  journalQuery,
  livesQuery,
  measurementsQuery,
  movementsQuery,
  myCautionsQuery,
  setUpsLearnedQuery,
  talliesQuery,
  trialStringsQuery,
  voidedEntriesQuery,
} from './queries.js';
import { setUpsLearnedAnswer } from './set-ups-learned.js';
import {
  dayViewAnswer,
  dayViewQuery,
  nowAnswer,
  packingRollAnswer,
  searchAnswer,
  searchQuery,
  shopViewAnswer,
  stringsLyingAnswer,
  stringsLyingQuery,
} from './views.js';

/** What is read but is no record of its own, by the name of its path: the ledger, the readings of the floor, the journal, the
 * lives of records; and what is worked out from them. */
export const READINGS = {
  balances: reading({
    summary: 'What lies where: each balance that is not zero.',
    permission: 'stock.read',
    query: balancesQuery,
    answer: wholeAnswer(balanceAnswer),
  }),
  movements: reading({
    summary: 'A page of what was moved from account to account, newest first.',
    permission: 'stock.read',
    query: movementsQuery,
    answer: pageAnswer(movementAnswer),
  }),
  'trial-strings': reading({
    summary: 'The trial strings of a run.',
    permission: 'run.read',
    query: trialStringsQuery,
    answer: wholeAnswer(trialStringAnswer),
  }),
  'past-dial-ins': reading({
    summary:
      'What past runs teach of dialling in: on one machine, and of their families on others; oldest first.',
    permission: 'run.read',
    query: pastDialInsQuery,
    answer: wholeAnswer(pastDialInAnswer),
  }),
  measurements: reading({
    summary:
      'A page of measurements, in the order in which they were taken; or the newest first where that is asked.',
    permission: 'run.read',
    query: measurementsQuery,
    answer: pageAnswer(measurementAnswer),
  }),
  tallies: reading({
    summary:
      'A page of tallies of good strings and scrap, in the order in which they were entered; or the newest first where that is asked.',
    permission: 'run.read',
    query: talliesQuery,
    answer: pageAnswer(tallyAnswer),
  }),
  'voided-entries': reading({
    summary: 'What was taken back of the entries of a run or of a lot, by whom and why; oldest first.',
    permission: 'run.read',
    query: voidedEntriesQuery,
    answer: wholeAnswer(voidedEntryAnswer),
  }),
  'my-cautions': reading({
    summary: 'Which cautions one has acknowledged at a machine, and when one last started a run there.',
    permission: 'run.read',
    query: myCautionsQuery,
    answer: myCautionsAnswer,
  }),
  'caution-readings': reading({
    summary: 'A page of who acknowledged which cautions at which machine, newest first.',
    permission: 'journal.read',
    query: cautionReadingsQuery,
    answer: pageAnswer(cautionReadingAnswer),
  }),
  'end-checks': reading({
    summary: 'A page of what was found of ends of strings and cores, newest first.',
    permission: 'run.read',
    query: endChecksQuery,
    answer: pageAnswer(endCheckAnswer),
  }),
  journal: reading({
    summary: 'A page of who did what, newest first.',
    permission: 'journal.read',
    query: journalQuery,
    answer: pageAnswer(journalAnswer),
  }),
  lives: reading({
    summary: 'The states of each kind of record, and the steps between them.',
    permission: 'shop.read',
    query: livesQuery,
    answer: wholeAnswer(lifeAnswer),
  }),
  now: reading({
    summary: "The shop's name, its moment and its day.",
    permission: 'shop.read',
    query: closed({}),
    answer: nowAnswer,
  }),
  'shop-view': reading({
    summary: 'The whole shop as it stands: wires, machines, recipes, sets, shelf, spools, rules and rates.',
    permission: 'shop.read',
    query: closed({}),
    answer: shopViewAnswer,
  }),
  'day-view': reading({
    summary: "A day's work worked out anew from what stands open: orders, runs, wire to pull, roll, costs.",
    permission: 'plan.read',
    query: dayViewQuery,
    answer: dayViewAnswer,
  }),
  'packing-roll': reading({
    summary:
      'What packing goes by: orders that are open, their packs, bins, and every lot that lies in them.',
    permission: 'pack.work',
    query: closed({}),
    answer: packingRollAnswer,
  }),
  'plan-view': reading({
    summary: "A day's plan as it is in force, or as it would be if it were settled now, with its runs.",
    permission: 'plan.read',
    query: planViewQuery,
    answer: planViewAnswer,
  }),
  needs: reading({
    summary: 'What needs a person now, of what one may read.',
    permission: 'shop.read',
    query: needsQuery,
    answer: needsAnswer,
  }),
  'strings-lying': reading({
    summary: 'What lies in the bins, lot by lot, lots in check and on hold too.',
    permission: 'stock.read',
    query: stringsLyingQuery,
    answer: stringsLyingAnswer,
  }),
  'wire-cover': reading({
    summary: 'Each wire of the shop: what is on hand, what was used of late, and how many days it lasts so.',
    permission: 'stock.read',
    query: wireCoverQuery,
    answer: wireCoverAnswer,
  }),
  calibration: reading({
    summary:
      'What measured strings teach of how wrap sits: families, predicted against measured, outliers, what to measure next.',
    permission: 'recipe.read',
    query: calibrationQuery,
    answer: calibrationAnswer,
  }),
  'set-ups-learned': reading({
    summary:
      'What past set-ups teach of scrap and minutes, by machine and kind of change; and scrap by cause.',
    permission: 'shop.read',
    query: setUpsLearnedQuery,
    answer: setUpsLearnedAnswer,
  }),
  'machine-wear': reading({
    summary: 'Whether winding machines drift month by month, by first strings of their runs, and how surely.',
    permission: 'shop.read',
    query: machineWearQuery,
    answer: machineWearAnswer,
  }),
  'complaint-register': reading({
    summary:
      'Letters of some days, and of strings sent in these days how many per thousand were complained of: by fault, and by where they came from.',
    permission: 'complaint.read',
    query: complaintRegisterQuery,
    answer: complaintRegisterAnswer,
  }),
  'complaint-trace': reading({
    summary: 'Where a complaint leads: its pack, lots, runs, machines and spools, as far as the records go.',
    permission: 'complaint.read',
    query: complaintTraceQuery,
    answer: complaintTraceAnswer,
  }),
  'dry-room-air': reading({
    summary:
      'The air of a dry room over some days: readings, excursions, what nobody read, days and weeks, and what it means for steel.',
    permission: 'stock.read',
    query: dryRoomAirQuery,
    answer: dryRoomAirAnswer,
  }),
  'lots-lying-during': reading({
    summary: 'Which string lots lay in bins at some moment of a time, by the ledger.',
    permission: 'stock.read',
    query: lotsLyingDuringQuery,
    answer: lotsLyingDuringAnswer,
  }),
  quality: reading({
    summary:
      'How the strings of a period came out: what the numbers say, run by run, groups compared, scrap by reason, first-pass yield.',
    permission: 'run.read',
    query: qualityQuery,
    answer: qualityAnswer,
  }),
  'quality-run': reading({
    summary: 'One run down to each of its measured strings and every spool that went into it.',
    permission: 'run.read',
    query: qualityRunQuery,
    answer: qualityRunAnswer,
  }),
  search: reading({
    summary: 'Records whose name, number, lot or player holds a text, of the kinds that one may read.',
    permission: 'shop.read',
    query: searchQuery,
    answer: searchAnswer,
  }),
} as const;

export type ReadingName = keyof typeof READINGS;
export type ReadingQuery<Name extends ReadingName> = Static<(typeof READINGS)[Name]['query']>;
export type ReadingAnswer<Name extends ReadingName> = Static<(typeof READINGS)[Name]['answer']>;

export interface ReadingDefinition<Query extends TSchema = TSchema, Answer extends TSchema = TSchema> {
  readonly summary: string;
  readonly permission: Permission;
  readonly query: Query;
  readonly answer: Answer;
}

function reading<Query extends TSchema, Answer extends TSchema>(
  definition: ReadingDefinition<Query, Answer>,
): ReadingDefinition<Query, Answer> {
  return definition;
}
