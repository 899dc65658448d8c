import type { Answered } from '../../contract/index.js';
import type { QueuedEntry } from './entry.js';
import type { EntryStore } from './entry-store.js';
import { nextToSend } from './order-of-sending.js';
import { verdictOn, waitAfter } from './what-came-back.js';

/** Whose cookie this browser has just now, as the server says. */
export type WhoIsHere = 'me' | 'someone-else' | 'nobody' | 'no-answer';

export interface SendingParts {
  readonly store: EntryStore;
  readonly personId: string;
  readonly send: (entry: QueuedEntry) => Promise<Answered<unknown>>;
  readonly whoIsHere: () => Promise<WhoIsHere>;
  /** After answers came: fetches what the shop made of them. Gives whether that came. */
  readonly fetchAnew: () => Promise<boolean>;
  /** The person is not, or no longer, who is signed in. */
  readonly onOtherPerson: () => void;
  /** The shop did an entry. */
  readonly onDone: (entry: QueuedEntry) => void;
  /** Whether the server was reached the last time. */
  readonly onReach: (isReached: boolean) => void;
}

export interface Sending {
  /** Sends what waits, now. */
  readonly kick: () => void;
  readonly stop: () => void;
}

/**
 * Sends the entries of a person one at a time, the next only after the answer, from one tab of the browser at a time. What gets
 * no answer is sent again by itself, later and later, under the same id.
 */
export function startSending(parts: SendingParts): Sending {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let failures = 0;
  let isGoing = false;
  let isAskedAgain = false;
  let isStopped = false;

  const later = (ms: number) => {
    clearTimeout(timer);
    if (!isStopped) timer = setTimeout(kick, ms);
  };
  const kick = () => {
    if (isStopped) return;
    if (isGoing) {
      isAskedAgain = true;
      return;
    }
    clearTimeout(timer);
    isAskedAgain = false;
    isGoing = true;
    void inOneTab(() => drain(parts, () => isStopped))
      .finally(() => {
        isGoing = false;
      })
      .then((end) => {
        failures = end.kind === 'again' ? failures + 1 : 0;
        if (end.kind === 'again') later(waitAfter(failures));
        else if (isAskedAgain) kick();
        else if (end.kind === 'held') later(Math.max(0, end.until - Date.now()));
      });
  };
  return {
    kick,
    stop: () => {
      isStopped = true;
      clearTimeout(timer);
    },
  };
}

type End =
  | { readonly kind: 'again' }
  | { readonly kind: 'held'; readonly until: number }
  | { readonly kind: 'rest' };

async function drain(parts: SendingParts, isStopped: () => boolean): Promise<End> {
  let end: End | undefined;
  while (!end && !isStopped()) end = await sendNext(parts);
  const isSwept = await sweep(parts);
  return isSwept ? (end ?? { kind: 'rest' }) : { kind: 'again' };
}

/** Gives why it goes no further; undefined where there may be more to send. */
async function sendNext(parts: SendingParts): Promise<End | undefined> {
  const { store, personId, send } = parts;
  const next = nextToSend(await store.all(), { personId, now: Date.now() });
  if (next.kind === 'held') return next;
  if (next.kind === 'nothing') return { kind: 'rest' };
  const hindrance = await whatHinders(parts);
  if (hindrance) return hindrance;
  const entry = await takeInHand(store, next.entry.number);
  if (!entry) return undefined;
  const answer = await send(entry);
  const verdict = answer.ok ? 'done' : verdictOn(answer.fault);
  parts.onReach(verdict !== 'again');
  if (verdict === 'again') return { kind: 'again' };
  if (verdict === 'sign-in') {
    parts.onOtherPerson();
    return { kind: 'rest' };
  }
  if (answer.ok) parts.onDone(entry);
  await store.change((queue) =>
    queue.put(
      answer.ok ? { ...entry, state: 'done' } : { ...entry, state: 'refused', problem: answer.fault },
    ),
  );
  // What was refused may be so because all moved on.
  if (!answer.ok) void parts.fetchAnew();
  return undefined;
}

/** An entry must never go in another's name: the cookie is the whole browser's, and another tab may have changed it. */
async function whatHinders({ whoIsHere, onReach, onOtherPerson }: SendingParts): Promise<End | undefined> {
  const who = await whoIsHere();
  if (who === 'me') return undefined;
  onReach(who !== 'no-answer');
  if (who === 'no-answer') return { kind: 'again' };
  onOtherPerson();
  return { kind: 'rest' };
}

/** Marks an entry as on its way, before it is: from then on the shop may have it. Undefined where it was taken back meanwhile. */
const takeInHand = (store: EntryStore, number: number): Promise<QueuedEntry | undefined> =>
  store.change(async (queue) => {
    const entry = await queue.get(number);
    if (!entry || entry.state === 'refused' || entry.state === 'done') return undefined;
    const { heldUntil: _, ...taken } = { ...entry, state: 'sending' as const };
    await queue.put(taken);
    return taken;
  });

/** Lets go of what is done, once the page has what the shop made of it. Gives whether nothing is left to let go of. */
async function sweep({ store, fetchAnew }: SendingParts): Promise<boolean> {
  const done = (await store.all()).filter(({ state }) => state === 'done');
  if (done.length === 0) return true;
  if (!(await fetchAnew())) return false;
  await store.change(async (queue) => {
    for (const { number } of done) await queue.drop(number);
  });
  return true;
}

/** Where the browser has no locks (a shop without a certificate), two tabs may send the same: the request's id makes it one. */
const inOneTab = <Given>(work: () => Promise<Given>): Promise<Given> =>
  'locks' in navigator ? navigator.locks.request('tautwork.outbox', work) : work();
