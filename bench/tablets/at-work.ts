import { Agent, type ClientRequest, get, request } from 'node:http';
import { performance } from 'node:perf_hooks';
import { v7 } from 'uuid';

/** What the process of the tablets is told. */
export interface Shift {
  readonly port: number;
  readonly token: string;
  readonly runIds: readonly string[];
  readonly tablets: number;
  readonly watchers: number;
  readonly seconds: number;
}

/** What it saw. */
export interface Shifted {
  /** How long each post took, ms. */
  readonly tookMs: readonly number[];
  /** Posts that were answered otherwise than done. */
  readonly refused: readonly string[];
  /** Ids of the measurements that were acknowledged. */
  readonly acknowledged: readonly string[];
  /** Events that each watcher got of measurements. */
  readonly heard: readonly number[];
  /** From the moment in an event to its arrival at a watcher, ms; clock of one machine, whole milliseconds. */
  readonly eventLagMs: readonly number[];
}

/** Tablets and watchers live in a process of their own, so that the server's is not slowed by them. */
process.once('message', (shift: Shift) => {
  work(shift).then(
    (shifted) => process.send?.(shifted, () => process.exit(0)),
    (fault) => {
      console.error(fault);
      process.exit(1);
    },
  );
});

async function work(shift: Shift): Promise<Shifted> {
  const heard: number[] = [];
  const eventLagMs: number[] = [];
  const watching = await Promise.all(
    Array.from({ length: shift.watchers }, (_, at) => watch(shift, at, heard, eventLagMs)),
  );
  const seen = { tookMs: [] as number[], refused: [] as string[], acknowledged: [] as string[] };
  await Promise.all(Array.from({ length: shift.tablets }, (_, at) => tablet(shift, at, seen)));
  // What was said last is still on its way.
  await pause(1500);
  for (const watcher of watching) watcher.destroy();
  return { ...seen, heard, eventLagMs };
}

const keepAlive = new Agent({ keepAlive: true, maxSockets: Number.POSITIVE_INFINITY });

/** Posts a measurement at every second, whether the one before was answered or not: people do not wait either. */
async function tablet(
  shift: Shift,
  at: number,
  seen: { readonly tookMs: number[]; readonly refused: string[]; readonly acknowledged: string[] },
): Promise<void> {
  const start = performance.now() + (1000 * at) / shift.tablets;
  const posts: Promise<void>[] = [];
  for (let second = 0; second < shift.seconds; second++) {
    await pause(start + 1000 * second - performance.now());
    const id = v7();
    const from = performance.now();
    posts.push(
      post(shift, id, shift.runIds[at % shift.runIds.length] ?? '').then((refusal) => {
        seen.tookMs.push(performance.now() - from);
        if (refusal === undefined) seen.acknowledged.push(id);
        else seen.refused.push(refusal);
      }),
    );
  }
  await Promise.all(posts);
}

function post({ port, token }: Shift, id: string, runId: string): Promise<string | undefined> {
  const row = { id, runId, quantity: 'diameter', value: 0.001168, placeM: 0.5, rotationDeg: 90 };
  const body = JSON.stringify({ rows: [{ ...row, instrument: 'micrometer 1' }] });
  return new Promise((resolve) => {
    const headers = {
      authorization: `Bearer ${token}`,
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(body),
      'idempotency-key': v7(),
    };
    const path = '/api/v1/runs/measurements';
    const asked = request(
      { port, host: '127.0.0.1', path, method: 'POST', headers, agent: keepAlive },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        answer.on('end', () =>
          resolve(answer.statusCode === 200 ? undefined : `${answer.statusCode} ${text}`),
        );
      },
    );
    asked.on('error', (fault) => resolve(fault.message));
    asked.end(body);
  });
}

/** Listens to live events as a screen does. */
function watch({ port, token }: Shift, at: number, heard: number[], lagMs: number[]): Promise<ClientRequest> {
  heard[at] = 0;
  return new Promise((resolve, reject) => {
    const headers = { authorization: `Bearer ${token}`, accept: 'text/event-stream' };
    const asked = get(
      { port, host: '127.0.0.1', path: '/api/v1/events', headers, agent: false },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (part: string) => {
          const blocks = `${text}${part}`.split('\n\n');
          text = blocks.pop() ?? '';
          for (const block of blocks) hear(block, at, heard, lagMs);
          resolve(asked);
        });
        answer.on('error', () => {});
      },
    );
    asked.on('error', reject);
  });
}

function hear(block: string, at: number, heard: number[], lagMs: number[]): void {
  const data = /^data: (\{.*"topic":"measurement".*\})$/m.exec(block)?.[1];
  if (data === undefined) return;
  heard[at] = (heard[at] ?? 0) + 1;
  lagMs.push(Date.now() - Date.parse((JSON.parse(data) as { readonly at: string }).at));
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, Math.max(0, ms)));
