import { get as httpGet, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { FastifyInstance } from 'fastify';

const open: IncomingMessage[] = [];

/** Hangs up on every server. */
export function stopListening(): void {
  for (const stream of open.splice(0)) stream.destroy();
}

interface Heard {
  readonly id?: string;
  readonly event?: string;
  readonly data?: string;
}

/** Listens as a browser does. `until` waits for as many events as asked; `ended` for the end. */
export async function listenTo(server: FastifyInstance, headers: Readonly<Record<string, string>>) {
  const { port } = server.server.address() as AddressInfo;
  const stream = await new Promise<IncomingMessage>((resolve, reject) => {
    httpGet({ port, path: '/api/v1/events', headers }, resolve).on('error', reject);
  });
  open.push(stream);
  let text = '';
  stream.setEncoding('utf8').on('data', (part: string) => {
    text += part;
  });
  const ended = new Promise<void>((resolve) => {
    stream.on('close', resolve).on('error', resolve);
  });
  const heard = () => text.split('\n\n').slice(0, -1).map(read);
  const events = () => heard().filter(({ event }) => event !== undefined);
  const more = () =>
    Promise.race([
      new Promise((resolve) => stream.once('data', resolve)),
      ended.then(() => Promise.reject(new Error(`The line was cut after ${text.length} letters.`))),
    ]);
  const whenever = async (isSo: () => boolean) => {
    while (!isSo()) await more();
  };
  return {
    stream,
    ended,
    text: () => text,
    events,
    until: async (count: number) => {
      await whenever(() => events().length >= count);
      return events();
    },
    whenever,
  };
}

const read = (block: string): Heard =>
  Object.fromEntries(
    block
      .split('\n')
      .map((line) => /^(\w+): (.*)$/.exec(line))
      .flatMap((found) => (found ? [[found[1]!, found[2]!]] : [])),
  );
