import { createServer, request as httpRequest, type Server, type ServerResponse } from 'node:http';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { PERMISSIONS } from '../../contract/index.js';
import type { Actor, StoredEvent } from '../../workshop/index.js';
import { type EventStream, eventStream } from './event-stream.js';

const actor: Actor = { by: 'console', permissions: new Set(PERMISSIONS) };
const event = (number: number, recordId: string): StoredEvent => ({
  number,
  topic: 'bin',
  recordId,
  version: 1,
  useCase: 'save-bin',
  at: '2031-01-01T00:00:00.000Z',
});
const events = (from: number, count: number, recordId = 'x'.repeat(1000)) =>
  Array.from({ length: count }, (_, index) => event(from + index, recordId));

let server: Server;
let port: number;
let opened: Promise<ServerResponse>;

beforeEach(async () => {
  opened = new Promise((resolve) => {
    server = createServer((_request, response) => {
      response.writeHead(200, { 'content-type': 'text/event-stream' });
      response.flushHeaders();
      resolve(response);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  port = (server.address() as AddressInfo).port;
});
afterEach(() => {
  server.closeAllConnections();
  server.close();
});

/** A screen that asks and then reads nothing. */
function deafScreen(): Socket {
  const socket = connect(port, '127.0.0.1', () => socket.write('GET / HTTP/1.1\r\nHost: x\r\n\r\n'));
  return socket.pause();
}

const gone = (response: ServerResponse) =>
  new Promise<void>((resolve) => (response.closed ? resolve() : response.once('close', resolve)));

const over = async (stream: EventStream, response: ServerResponse) => {
  while (!response.destroyed) {
    await stream.beat();
    await new Promise((resolve) => setImmediate(resolve));
  }
};

describe('a stream of events', () => {
  it('lets a screen go that does not read, rather than keep all that it misses', async () => {
    const screen = deafScreen();
    const response = await opened;
    const stream = eventStream({
      response,
      asker: { actor, again: async () => actor },
      after: 0,
      since: async () => [],
      onFault: () => {},
    });
    await new Promise((resolve) => setImmediate(resolve));
    for (let from = 1; !response.destroyed && from < 200_000; from += 100) stream.offer(events(from, 100));
    expect(response.destroyed).toBe(true);
    await gone(response);
    screen.destroy();
  });

  it('does not read on from the store while a screen does not take what was read, and lets it go after a while', async () => {
    const screen = deafScreen();
    const response = await opened;
    let asked = 0;
    const stream = eventStream({
      response,
      asker: { actor, again: async () => actor },
      after: 0,
      since: async (after, limit) => {
        asked += 1;
        return events(after + 1, limit, 'short');
      },
      onFault: () => {},
    });
    // The system takes some for it before it is full.
    for (let before = -1; asked !== before || !response.writableNeedDrain; ) {
      before = asked;
      for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setImmediate(resolve));
    }
    expect(response.destroyed).toBe(false);
    await over(stream, response);
    await gone(response);
    screen.destroy();
  });

  it('says nothing twice that comes both from the store and live', async () => {
    const heard = new Promise<string>((resolve) => {
      let text = '';
      httpRequest({ port }, (answer) => {
        answer.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        answer.on('end', () => resolve(text));
      }).end();
    });
    const response = await opened;
    let release: (events: readonly StoredEvent[]) => void = () => {};
    const first = new Promise<readonly StoredEvent[]>((resolve) => {
      release = resolve;
    });
    const kept = events(1, 4);
    let reads = 0;
    let readAgain = () => {};
    const done = new Promise<void>((resolve) => {
      readAgain = resolve;
    });
    const stream = eventStream({
      response,
      asker: { actor, again: async () => actor },
      after: 0,
      since: async (after) => {
        reads += 1;
        if (reads === 1) return first;
        readAgain();
        return kept.filter(({ number }) => number > after);
      },
      onFault: () => {},
    });
    // Written while the first page is still being read: it may or may not hold them.
    stream.offer(kept.slice(2));
    release(kept.slice(0, 3));
    await done;
    await new Promise((resolve) => setImmediate(resolve));
    // The news of what was read already may come late.
    stream.offer(kept.slice(1));
    response.end();
    const numbers = [...(await heard).matchAll(/^id: (\d+)$/gm)].map(([, number]) => Number(number));
    expect(numbers).toEqual([1, 2, 3, 4]);
  });
});
