import { expect, it } from 'vitest';
import { EventFeed } from './event-feed.js';
import type { StoredEvent } from './store.js';

const event = (number: number): StoredEvent => ({
  number,
  topic: 'bin',
  recordId: `bin ${number}`,
  version: 1,
  useCase: 'save-bin',
  at: '2031-01-01T00:00:00.000Z',
});

it('tells who begins to listen while the feed looks how far it can pass over, of what is written meanwhile', async () => {
  const written: StoredEvent[] = [event(1)];
  let answer: (last: number) => void = () => {};
  const feed = new EventFeed(
    {
      since: async (number) => written.filter((each) => each.number > number),
      last: () => new Promise((resolve) => (answer = resolve)),
      onTrouble: (thrown) => expect.unreachable(String(thrown)),
    },
    1,
  );
  feed.poke();
  const heard: number[] = [];
  feed.listen((events) => heard.push(...events.map(({ number }) => number)));
  written.push(event(2));
  feed.poke();
  answer(2);
  await feed.settled();
  expect(heard).toEqual([2]);
});

it('passes over what is written while nobody listens', async () => {
  const feed = new EventFeed({ since: async () => [event(2)], last: async () => 2, onTrouble: () => {} }, 1);
  feed.poke();
  await feed.settled();
  const heard: number[] = [];
  feed.listen((events) => heard.push(...events.map(({ number }) => number)));
  expect(heard).toEqual([]);
});
