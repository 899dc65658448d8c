import { type InputOf, type OutputOf, withoutSecrets } from '../contract/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import type { Store, Transaction } from '../store/index.js';
import { type Clock, lastWritten, later } from './clock.js';
import { inputProblems } from './input-problems.js';
import { refuse } from './refusal.js';
import { earlierAnswer, keepAnswer } from './repeats.js';
import { thrownFault } from './store-trouble.js';
import type { Actor, AnyUseCase, WorkshopFault } from './use-case.js';
import { eventsOf, watched } from './watched.js';

/** Who does it, when, and what names new records. */
export interface Performer {
  readonly actor: Actor;
  readonly clock: Clock;
  readonly newId: () => string;
}

export interface Asked extends Performer {
  /** As it came: checked against the use case's schema here. */
  readonly input: unknown;
  /** The client's own id of its request. Left out, a repeat is not recognised. */
  readonly requestId?: string;
}

export type AnswerOf<Asked extends AnyUseCase> = OutputOf<Asked['definition']>;

/**
 * Does one use case, whole or not at all: in one transaction with its journal entry and its events. A fault
 * undoes everything. A repeat of a request that was done gets the answer it got, and changes nothing.
 */
export async function perform<Which extends AnyUseCase>(
  store: Store,
  useCase: Which,
  asked: Asked,
): Promise<Result<AnswerOf<Which>, WorkshopFault>> {
  const refused = beforehand(useCase, asked);
  if (refused) return fail(refused);
  return wholeOrNot(store, (tx) => doIn(tx, useCase, asked));
}

/** Does one more use case within the work in hand and gives its answer; a fault ends all of it. */
export type Ask = <Which extends AnyUseCase>(
  useCase: Which,
  input: InputOf<Which['definition']>,
  requestId?: string,
) => Promise<AnswerOf<Which>>;

/** Does many use cases in one transaction: all of them, or none. Each has its own journal entry and moment. */
export const performMany = <Answer>(
  store: Store,
  performer: Performer,
  work: (ask: Ask, tx: Transaction) => Promise<Answer>,
): Promise<Result<Answer, WorkshopFault>> =>
  wholeOrNot(store, (tx) => {
    const ask: Ask = async (useCase, input, requestId) => {
      const asked = { ...performer, input, ...(requestId === undefined ? {} : { requestId }) };
      const refused = beforehand(useCase, asked);
      return refused ? refuse(refused) : doIn(tx, useCase, asked);
    };
    return work(ask, tx);
  });

/** What can be refused without looking at a record: permission first, so that a stranger learns nothing. */
function beforehand({ definition }: AnyUseCase, { actor, input }: Asked): WorkshopFault | undefined {
  const { permission } = definition;
  if (!actor.permissions.has(permission)) return { code: 'permission.missing', permission };
  const problems = inputProblems(definition.input, input);
  return problems.length > 0 ? { code: 'input.invalid', problems } : undefined;
}

async function doIn<Which extends AnyUseCase>(
  transaction: Transaction,
  { definition, run }: Which,
  asked: Asked,
): Promise<AnswerOf<Which>> {
  const { actor, input, requestId, clock, newId } = asked;
  const request = requestId === undefined ? undefined : { definition, requestId, input };
  const earlier = request && (await earlierAnswer(transaction, request));
  if (earlier) return (earlier.ok ? earlier.value : refuse(earlier.fault)) as AnswerOf<Which>;

  const now = later(clock.now(), await lastWritten(transaction));
  const { tx, touched } = watched(transaction);
  const done = await run({ tx, actor, now, newId }, input as never);
  if (!done.ok) refuse(done.fault);

  const useCase = definition.name;
  const bareInput = withoutSecrets(definition.input, input);
  const entry = { id: newId(), at: now, by: actor.by, useCase, input: bareInput, touched: touched() };
  await transaction.journal.append(entry);
  await transaction.events.append(eventsOf(entry.touched, { useCase, at: now }));
  if (request) await keepAnswer(transaction, request, { answer: done.value, at: now });
  return done.value as AnswerOf<Which>;
}

/** Faults are thrown through the store, so that it rolls back, and caught here. */
async function wholeOrNot<Answer>(
  store: Store,
  work: (tx: Transaction) => Promise<Answer>,
): Promise<Result<Answer, WorkshopFault>> {
  try {
    return succeed(await store.write(work));
  } catch (thrown) {
    const fault = thrownFault(thrown);
    if (!fault) throw thrown;
    return fail(fault);
  }
}
