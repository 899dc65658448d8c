import type { InputNamed, ProblemDetails, UseCaseName } from '../../contract/index.js';

/**
 * How an entry stands: waiting for its turn; on its way (it may have arrived, though no answer came yet); refused by the
 * shop, and kept until a person decides; done, and kept until the page has fetched what the shop made of it.
 */
export type EntryState = 'waiting' | 'sending' | 'refused' | 'done';

/** One thing that a person of the floor entered, as it lies in this browser until the shop has it. */
export interface QueuedEntry<Name extends UseCaseName = UseCaseName> {
  /** In order of entry. Whoever mends an entry keeps its place. */
  readonly number: number;
  /** The request's own id: the shop does it once, however often it is sent. */
  readonly requestId: string;
  readonly useCase: Name;
  readonly input: InputNamed<Name>;
  /** What it is, as the person would say it: `Good string, run of 26s`. */
  readonly label: string;
  readonly by: { readonly id: string; readonly name: string };
  /** When it was entered, ISO 8601. */
  readonly at: string;
  /** Ids of what it depends on: where one entry is refused, later ones about the same wait for a person's word. */
  readonly about: readonly string[];
  readonly state: EntryState;
  /** Not sent before this moment (ms since 1970), so that a slip can be taken back. */
  readonly heldUntil?: number;
  /** What the shop said when it refused. */
  readonly problem?: ProblemDetails;
  /** Address of the form where it can be mended: `/machine?run=…`. */
  readonly place?: string;
}

/** Whether an entry is one of a use case; narrows its input. */
export const isOf = <Name extends UseCaseName>(
  entry: QueuedEntry,
  useCase: Name,
): entry is QueuedEntry & QueuedEntry<Name> => entry.useCase === useCase;
