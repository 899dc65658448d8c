import type { ServerResponse } from 'node:http';
import type { Store, StoredEvent } from '../../workshop/index.js';
import type { Asker } from '../asker.js';
import { workshopProblem } from '../workshop-problem.js';
import { type EventStream, eventStream, greeting } from './event-stream.js';

/** All the screens that listen to this process. */
export interface EventHub {
  /** How many more may listen is looked at first: a problem where the house is full. */
  readonly refuseWhenFull: () => void;
  readonly open: (response: ServerResponse, asker: Asker, after: number | undefined) => Promise<void>;
  /** Looks at once whether all who listen still may: after a sign-out or a change of people. */
  readonly lookAgain: () => void;
  readonly close: () => void;
}

interface HubParts {
  readonly store: Store;
  /** Milliseconds between signs of life. Proxies let a connection go that is silent for a minute. */
  readonly beatMs?: number;
  readonly onFault: (fault: unknown) => void;
}

const USUAL_BEAT_MS = 15_000;
const MOST_STREAMS = 500;

export function eventHub({ store, beatMs = USUAL_BEAT_MS, onFault }: HubParts): EventHub {
  const streams = new Set<EventStream>();
  const lookAgain = () => {
    for (const stream of streams) stream.lookAgain().catch(onFault);
  };
  const beat = () => {
    for (const stream of streams) stream.beat().catch(onFault);
  };
  const hand = (events: readonly StoredEvent[]) => {
    for (const stream of streams) stream.offer(events);
    if (events.some(({ topic }) => topic === 'person')) lookAgain();
  };
  const stopHearing = store.onEvents(hand);
  const beats = setInterval(beat, beatMs);
  beats.unref();

  return {
    refuseWhenFull: () => {
      if (streams.size >= MOST_STREAMS) {
        throw workshopProblem({ code: 'events.full', most: MOST_STREAMS });
      }
    },
    open: async (response, asker, asked) => {
      const last = await store.read(({ events }) => events.last());
      // A number that was never given: the screen knew another database, such as one before a restore.
      const startOver = asked !== undefined && asked > last;
      const after = asked === undefined || startOver ? last : asked;
      response.write(greeting(after, startOver));
      const since = (number: number, limit: number) =>
        store.read(({ events }) => events.since(number, limit));
      const stream = eventStream({ response, asker, after, since, onFault });
      streams.add(stream);
      response.once('close', () => streams.delete(stream));
    },
    lookAgain,
    close: () => {
      clearInterval(beats);
      stopHearing();
      for (const stream of streams) stream.end();
    },
  };
}
