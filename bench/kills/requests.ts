import {
  type AnyUseCase,
  moveStrings,
  receiveSpool,
  recordMeasurements,
  recordTally,
  weighSpool,
} from '../../src/workshop/index.js';

/** Tablets that a program serves at once. */
export const TABLETS = 4;

/** The records of a shop that requests speak of. */
export interface Ground {
  readonly wireId: string;
  readonly runId: string;
  readonly lotId: string;
  readonly fromBinId: string;
  readonly toBinId: string;
}

/** Which request it is: the how-manieth of a tablet in a round. */
export interface Turn {
  readonly round: number;
  readonly tablet: number;
  readonly count: number;
}

export interface Request {
  readonly requestId: string;
  readonly useCase: AnyUseCase;
  readonly input: object;
}

/** What a tablet asks in its turn: always the same for the same turn, so that whoever repeats it needs only the turn. */
export function requestOf(ground: Ground, turn: Turn): Request {
  const requestId = idOf(turn, 0);
  const id = idOf(turn, 1);
  switch (turn.count % 5) {
    case 0: {
      const spool = { id, wireId: ground.wireId, name: `spool ${id}`, lot: 'H1', grossKg: 2.5, tareKg: 0.5 };
      return { requestId, useCase: receiveSpool, input: spool };
    }
    case 1: {
      const spoolId = idOf({ ...turn, count: turn.count - 1 }, 1);
      return { requestId, useCase: weighSpool, input: { spoolId, expectedVersion: 1, grossKg: 2.4375 } };
    }
    case 2: {
      const row = { runId: ground.runId, quantity: 'diameter', instrument: 'micrometer 1' };
      const rows = [0.001168, 0.001171, 0.001169].map((value, at) => ({
        ...row,
        id: idOf(turn, 1 + at),
        value,
      }));
      return { requestId, useCase: recordMeasurements, input: { rows } };
    }
    case 3: {
      const counted = { station: 'coiler', outcome: 'scrap', reason: 'bent', count: 1 };
      return { requestId, useCase: recordTally, input: { id, runId: ground.runId, ...counted } };
    }
    default: {
      const { lotId, fromBinId, toBinId } = ground;
      return { requestId, useCase: moveStrings, input: { lotId, fromBinId, toBinId, count: 1 } };
    }
  }
}

/** Kinds of what a request writes, as the journal must tell of it. */
export const WRITES: Readonly<Record<string, readonly string[]>> = {
  'receive-spool': ['spool', 'movement'],
  'weigh-spool': ['movement', 'spool'],
  'record-measurements': ['measurement'],
  'record-tally': ['tally'],
  'move-strings': ['movement'],
};

/** Names what a use case writes by its request, so that each row tells whose it is. A second asker starts from another
 * number: were a thing done twice, both would be seen. */
export function idsOfRequest(requestId: string, from: number): () => string {
  let number = from;
  return () => withNumber(requestId, number++);
}

/** The request that a thing was named by; undefined for what is older than the requests. */
export const requestOfId = (id: string): string | undefined =>
  id.startsWith(OURS) ? withNumber(id, 0) : undefined;

/** UUIDs whose moment is in the first minutes of 1970: nothing else in a shop has such. */
const OURS = '0000';

const idOf = ({ round, tablet, count }: Turn, number: number): string =>
  withNumber(`${OURS}${hex(round, 4)}-${hex(tablet, 4)}-7${hex(count, 3)}-8000-`, number);

const withNumber = (id: string, number: number): string => `${id.slice(0, 24)}${hex(number, 12)}`;

const hex = (number: number, digits: number): string => number.toString(16).padStart(digits, '0');
