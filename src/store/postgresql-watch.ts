import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import type { Watch } from './engine.js';
import { connectionTo } from './postgresql-driver.js';

const FIRST_PAUSE_MS = 100;
const LONGEST_PAUSE_MS = 5_000;

/** The channel of one schema's events; the message is only the number, since long ones are refused. */
export const CHANNEL_SQL = `'tautwork_events_' || current_schema()`;

/**
 * Listens over a connection of its own, since one from the pool may be given back in between. When the connection is
 * lost it is made anew, and whoever watches is told at once: what was said meanwhile was said to nobody.
 */
export function watchServer(url: string, notice: () => void, onTrouble: (thrown: unknown) => void): Watch {
  const ending = new AbortController();
  const watching = watchUntil(ending.signal, url, notice, onTrouble);
  return {
    stop: async () => {
      ending.abort();
      await watching;
    },
  };
}

async function watchUntil(
  ending: AbortSignal,
  url: string,
  notice: () => void,
  onTrouble: (thrown: unknown) => void,
): Promise<void> {
  let waitMs = FIRST_PAUSE_MS;
  while (!ending.aborted) {
    try {
      await listenOnce(ending, url, () => {
        waitMs = FIRST_PAUSE_MS;
        notice();
      });
    } catch (thrown) {
      onTrouble(thrown);
    }
    if (ending.aborted) return;
    await pause(waitMs, undefined, { signal: ending }).catch(() => {});
    waitMs = Math.min(waitMs * 2, LONGEST_PAUSE_MS);
  }
}

/** Until the connection is lost (throws) or no longer wanted. */
async function listenOnce(ending: AbortSignal, url: string, notice: () => void): Promise<void> {
  const client = new pg.Client(connectionTo(url));
  const lost = new Promise<never>((_, reject) => {
    client.on('error', reject);
    client.on('end', () => reject(new Error('Connection terminated')));
  });
  lost.catch(() => {});
  const ended = new Promise<void>((resolve) => {
    ending.addEventListener('abort', () => resolve(), { once: true });
  });
  try {
    await client.connect();
    client.on('notification', notice);
    const { rows } = await client.query<{ channel: string }>(`select ${CHANNEL_SQL} as channel`);
    await client.query(`listen ${client.escapeIdentifier(rows[0]!.channel)}`);
    notice();
    await Promise.race([lost, ended]);
  } finally {
    await client.end().catch(() => {});
  }
}
