import type { FaultWords } from './order-faults.js';

/** A fault of a use case as data: its code, and what else there is to tell. */
export interface FactsOf {
  readonly code: string;
  readonly [fact: string]: unknown;
}

/** Words that are always the same, or that tell the facts. */
export type WordsOfFault = FaultWords | ((fault: FactsOf) => FaultWords);

/** Refusals that any use case may give. */
export const SHOP_WIDE_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'input.invalid': ({ problems }) => ({
    what: `What was sent does not have the form that is asked for: ${problemsInWords(problems)}.`,
    mend: 'Mend the places named.',
  }),
  'permission.missing': ({ permission }) => ({
    what: `You may not do this (${permission}).`,
    mend: 'Ask the owner, who can give you the role that may.',
  }),
  'repeat.different': ({ useCase }) => ({
    what: `This request’s id was already used to ask for something else (${useCase}).`,
    mend: 'Give every new request an id of its own; repeat a request word for word.',
  }),
  'repeat.shown-once': {
    what: 'This was done already, and its secret is shown once only.',
    mend: 'If the secret is lost, revoke it and make another.',
  },
  'record.missing': ({ kind, id }) => ({
    what: `There is no ${kindInWords(kind)} ${id}.`,
    mend: 'Load the list again and choose from it.',
  }),
  'stale-version': ({ kind, expectedVersion, current }) => ({
    what: `Someone changed this ${kindInWords(kind)} after you saw it: you saw version ${expectedVersion}, it stands at ${versionOf(current)}.`,
    mend: 'Look at how it stands now, and do your change again where it still holds.',
  }),
  taken: ({ kind, key, value }) => ({
    what: `Another ${kindInWords(kind)} already has the ${key} ${value}.`,
    mend: 'Choose another.',
  }),
  'lifecycle.step-refused': ({ of, state, step, allowed }) => ({
    what: `A ${kindInWords(of)} that is ${state} cannot take the step “${step}”.`,
    mend: stepsInWords(allowed),
  }),
  'demo.shop-not-empty': ({ table }) => ({
    what: `The shop is not empty: ${table} holds rows.`,
    mend: 'Load the demo into a place where no shop is yet.',
  }),
  'store.disk-full': {
    what: 'The disk is full; nothing was written.',
    mend: 'Make room on the disk, then try again.',
  },
  'store.read-only': {
    what: 'The records cannot be written: their file or disk is read-only.',
    mend: 'Give the program the right to write there, then try again.',
  },
  'store.locked': {
    what: 'Another program holds the records locked; nothing was written.',
    mend: 'Try again; if it stays so, end the other program.',
  },
  'store.lost': {
    what: 'The database does not answer; nothing is known to be written.',
    mend: 'Try again with the same request id: what was written is not written twice.',
  },
  'store.newer': {
    what: 'The records were written by a newer version of this program.',
    mend: 'Start that version, or restore a backup of this one.',
  },
  'store.damaged': {
    what: 'The file of the records is damaged.',
    mend: 'Run `tautwork check`, and restore the last good backup.',
  },
};

/** `string-lot` is a string lot. */
export const kindInWords = (kind: unknown): string => String(kind).replaceAll('-', ' ');

const MOST_SHOWN = 8;

function problemsInWords(problems: unknown): string {
  const all = problems as readonly { readonly path: string; readonly message: string }[];
  const shown = all.slice(0, MOST_SHOWN).map(({ path, message }) => `${path} ${message}`);
  return [...shown, ...(all.length > MOST_SHOWN ? [`and ${all.length - MOST_SHOWN} more`] : [])].join('; ');
}

const versionOf = (record: unknown): string =>
  String((record as { readonly version?: number } | undefined)?.version ?? 'another');

function stepsInWords(steps: unknown): string {
  const allowed = (steps as readonly string[]).map((step) => `“${step}”`);
  return allowed.length > 0 ? `From there it can take ${allowed.join(' or ')}.` : 'Its life has ended there.';
}
