import type { InputOf, OutputOf, Permission, UseCaseDefinition } from '../contract/index.js';
import type { Result } from '../core/foundation/index.js';
import type { Transaction } from '../store/index.js';

/** Who asks. */
export interface Actor {
  /** `person/<id>`, `token/<id>` or `console`. */
  readonly by: string;
  /** The person behind it; left out at the console. */
  readonly personId?: string;
  readonly permissions: ReadonlySet<Permission>;
}

/** What a use case works with. Everything it changes goes through `tx`, or nothing of it happens. */
export interface Work {
  readonly tx: Transaction;
  readonly actor: Actor;
  /** This moment, UTC with milliseconds; never earlier than the moment of an earlier write. */
  readonly now: string;
  /** A fresh UUIDv7, for records that the use case itself makes. */
  readonly newId: () => string;
}

/** Why the shop refuses, as data; `contract` has the words. */
export interface WorkshopFault {
  readonly code: string;
  readonly [fact: string]: unknown;
}

export interface UseCase<Definition extends UseCaseDefinition = UseCaseDefinition> {
  readonly definition: Definition;
  readonly run: (
    work: Work,
    input: InputOf<Definition>,
  ) => Promise<Result<OutputOf<Definition>, WorkshopFault>>;
}

/** Any use case, its input not known: what lists of them hold. */
export interface AnyUseCase {
  readonly definition: UseCaseDefinition;
  readonly run: (work: Work, input: never) => Promise<Result<unknown, WorkshopFault>>;
}

/** Ties what a use case does to what it is. */
export const useCase = <Definition extends UseCaseDefinition>(
  definition: Definition,
  run: UseCase<Definition>['run'],
): UseCase<Definition> => ({ definition, run });
