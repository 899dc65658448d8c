import type { Session } from '../../store/index.js';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How long a one-time link can be used. The owner's own is used at once; an invited person may be away. */
export const LINK_LIFE_MS = { console: DAY, invitation: 7 * DAY } as const;

interface SessionLife {
  /** It ends so long after its last use. */
  readonly idleMs: number;
  /** It ends so long after its beginning, used or not. */
  readonly wholeMs: number;
}

/** At a desk a session lasts as long as someone comes back within a week; on the floor it lasts a shift. */
const SESSION_LIVES: Readonly<Record<Session['via'], SessionLife>> = {
  password: { idleMs: 7 * DAY, wholeMs: 30 * DAY },
  'sign-in-link': { idleMs: 7 * DAY, wholeMs: 30 * DAY },
  pin: { idleMs: 4 * HOUR, wholeMs: 14 * HOUR },
};

/** Ended sessions are kept so long, for whoever asks who was signed in where. */
export const ENDED_SESSIONS_KEPT_MS = 90 * DAY;

/** How long the first five wrong answers lock, and the longest that any number does. */
export const LOCK_MS = { first: 15 * MINUTE, longest: DAY } as const;

/** A moment so long after another; negative: before it. */
export const after = (moment: string, ms: number): string => new Date(Date.parse(moment) + ms).toISOString();

/** When a session ends that is used now: idle life from now, yet never past its whole life. */
export function sessionEnd({ via, createdAt }: Pick<Session, 'via' | 'createdAt'>, now: string): string {
  const { idleMs, wholeMs } = SESSION_LIVES[via];
  return new Date(Math.min(Date.parse(now) + idleMs, Date.parse(createdAt) + wholeMs)).toISOString();
}

/** Whether its end has moved enough to be worth a write: a twentieth of the idle life. */
export const isWorthExtending = (session: Session, now: string): boolean =>
  sessionEnd(session, now) > after(session.expiresAt, SESSION_LIVES[session.via].idleMs / 20);
