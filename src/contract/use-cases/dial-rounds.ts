import Type from 'typebox';
import { dialQuantity, enteredDialReading, id, readingError } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, within } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';
import { expectedVersion } from './shop.js';

export const beginDialRound = defineUseCase({
  name: 'begin-dial-round',
  summary: 'Begin to measure the dial of a machine, number by number',
  permission: 'run.work',
  path: '/dial-rounds/begin',
  input: closed({
    id,
    machineId: id,
    quantity: dialQuantity,
    dials: Type.Array(Type.Number(), { minItems: 2, maxItems: 60 }),
    readingError,
    wantedShare: within(0.0001, 0.1, 'wanted of one reading, one standard deviation, share'),
  }),
  output: recordSchema('dial-round'),
});

/** Names no version: readings add up, in whatever order tablets get through with them. */
export const recordDialReading = defineUseCase({
  name: 'record-dial-reading',
  summary: 'Write down what a number of a dial gave',
  permission: 'run.work',
  path: '/dial-rounds/readings',
  input: closed({ roundId: id, ...enteredDialReading }),
  output: recordSchema('dial-round'),
});

export const strikeDialReading = defineUseCase({
  name: 'strike-dial-reading',
  summary: 'Take a reading of a dial out as a slip, or let it count again; it is kept',
  permission: 'run.work',
  path: '/dial-rounds/readings/strike',
  input: closed({ roundId: id, readingId: id, isStruck: Type.Boolean() }),
  output: recordSchema('dial-round'),
});

const ofRound = { id, expectedVersion };
const withItsMachine = { round: recordSchema('dial-round'), machine: recordSchema('machine') };

export const adoptDialRound = defineUseCase({
  name: 'adopt-dial-round',
  summary: 'Set the machine by the table that was measured',
  permission: 'shop.edit',
  path: '/dial-rounds/adopt',
  input: closed(ofRound),
  output: closed(withItsMachine),
});

export const undoDialRound = defineUseCase({
  name: 'undo-dial-round',
  summary: 'Put the table back that was in force before a measured one was adopted',
  permission: 'shop.edit',
  path: '/dial-rounds/undo',
  input: closed(ofRound),
  output: closed(withItsMachine),
});

export const dropDialRound = defineUseCase({
  name: 'drop-dial-round',
  summary: 'Give up measuring a dial; its readings are kept',
  permission: 'run.work',
  path: '/dial-rounds/drop',
  input: closed(ofRound),
  output: recordSchema('dial-round'),
});
