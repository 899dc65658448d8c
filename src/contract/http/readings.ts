import type { Static, TSchema } from 'typebox';
import type { Permission } from '../permissions.js';
import {
  balanceAnswer,
  journalAnswer,
  lifeAnswer,
  measurementAnswer,
  movementAnswer,
  pageAnswer,
  tallyAnswer,
  trialStringAnswer,
  wholeAnswer,
} from './answers.js';
import {
  balancesQuery,
  journalQuery,
  livesQuery,
  measurementsQuery,
  movementsQuery,
  talliesQuery,
  trialStringsQuery,
} from './queries.js';

/** What is read but is no record of its own, by the name of its path: the ledger, the readings of the floor, the journal, the
 * lives of records. */
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
  measurements: reading({
    summary: 'A page of measurements, newest first.',
    permission: 'run.read',
    query: measurementsQuery,
    answer: pageAnswer(measurementAnswer),
  }),
  tallies: reading({
    summary: 'A page of tallies of good strings and scrap, newest first.',
    permission: 'run.read',
    query: talliesQuery,
    answer: pageAnswer(tallyAnswer),
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
