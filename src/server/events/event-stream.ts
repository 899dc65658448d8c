import type { ServerResponse } from 'node:http';
import type { Actor, StoredEvent } from '../../workshop/index.js';
import type { Asker } from '../asker.js';
import { mayHearOf } from './hearing.js';

/** One screen that listens. */
export interface EventStream {
  /** Hands on what was just written, or has it read when its turn comes. */
  readonly offer: (events: readonly StoredEvent[]) => void;
  /** Looks at whether whoever listens still may, and says that the line is alive. */
  readonly lookAgain: () => Promise<void>;
  /** The same at its regular time, when a screen that took nothing since the last beat is let go. */
  readonly beat: () => Promise<void>;
  readonly end: () => void;
}

interface StreamParts {
  readonly response: ServerResponse;
  readonly asker: Asker;
  /** The last event that the screen has. */
  readonly after: number;
  readonly since: (number: number, limit: number) => Promise<readonly StoredEvent[]>;
  readonly onFault: (fault: unknown) => void;
}

/** Most bytes that may wait for a slow reader before it is let go. It comes back and resumes where it was. */
const MOST_WAITING_BYTES = 1024 * 1024;
const READ_AT_ONCE = 500;

/**
 * Sends events to one screen in the order of their numbers, each once: first those it missed, read from the store, then
 * those that are offered. One that reads too slowly is let go, rather than kept in memory without end.
 */
export function eventStream({ response, asker, after, since, onFault }: StreamParts): EventStream {
  let actor: Actor = asker.actor;
  let position = after;
  let reading = false;
  let moreCame = false;
  let wasFull = false;

  const send = (event: StoredEvent): void => {
    if (event.number <= position) return;
    position = event.number;
    if (mayHearOf(actor, event.topic)) response.write(asText(event));
    if (response.writableLength > MOST_WAITING_BYTES) response.destroy();
  };

  const readOn = async (): Promise<void> => {
    for (;;) {
      moreCame = false;
      const events = await since(position, READ_AT_ONCE);
      events.forEach(send);
      if (response.destroyed || (events.length < READ_AT_ONCE && !moreCame)) return;
      await roomIn(response);
    }
  };

  const startReading = async (): Promise<void> => {
    reading = true;
    try {
      await readOn();
    } catch (fault) {
      // The screen resumes by itself once the store answers again.
      onFault(fault);
      response.destroy();
    } finally {
      reading = false;
    }
  };

  const lookAgain = async (): Promise<void> => {
    const now = await asker.again();
    if (!now?.permissions.has('events.read')) return endWith(response, SIGN_IN_ENDED);
    actor = now;
    response.write(': still here\n\n');
  };

  void startReading();
  return {
    offer: (events) => {
      if (reading) moreCame = true;
      else events.forEach(send);
    },
    lookAgain,
    beat: async () => {
      if (wasFull && response.writableNeedDrain) response.destroy();
      wasFull = response.writableNeedDrain;
      await lookAgain();
    },
    end: () => endWith(response, ''),
  };
}

/** What a screen first gets: where it stands, so that it can resume from there, and how soon to come back. */
export const greeting = (position: number, startOver: boolean): string =>
  `retry: 2000\nid: ${position}\nevent: ${startOver ? 'start-over' : 'here'}\ndata: {}\n\n`;

const SIGN_IN_ENDED = 'event: sign-in-ended\ndata: {}\n\n';

const asText = ({ number, ...change }: StoredEvent): string =>
  `id: ${number}\nevent: change\ndata: ${JSON.stringify(change)}\n\n`;

function endWith(response: ServerResponse, lastWords: string): void {
  if (!response.writableEnded) response.end(lastWords);
}

/** Waits until the socket took what was written, or is gone. */
function roomIn(response: ServerResponse): Promise<void> {
  if (response.destroyed || !response.writableNeedDrain) return Promise.resolve();
  return new Promise((resolve) => {
    const go = () => {
      response.off('drain', go).off('close', go);
      resolve();
    };
    response.on('drain', go).on('close', go);
  });
}
