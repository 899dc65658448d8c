import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { Turn } from './requests.js';
import type { Task } from './writer.js';

/** When a writer is killed. */
export interface Moment {
  /** From when the time runs: from when it is told to begin, or from its first acknowledgement. */
  readonly from: 'start' | 'first-answer';
  readonly afterMs: number;
}

/** What a writer had acknowledged when it was killed. */
export interface Acknowledged extends Turn {
  readonly answer: unknown;
}

export interface Writers {
  /** Lets a writer work until its moment, kills it with a signal that it cannot hear, and gives its acknowledgements. */
  readonly killedAt: (task: Task, moment: Moment) => Promise<readonly Acknowledged[]>;
  readonly close: () => void;
}

/** Writers that wait, loaded, so that a round need not wait for them. */
export async function writersAtTheReady(): Promise<Writers> {
  const program = await bundled();
  const waiting = Array.from({ length: 2 }, () => start(program));
  return {
    killedAt: async (task, moment) => {
      const writer = await waiting.shift()!;
      waiting.push(start(program));
      return killedAt(writer, task, moment);
    },
    close: () => {
      for (const writer of waiting) void writer.then((process) => process.kill('SIGKILL'));
    },
  };
}

/** The writer in one file, which starts in a tenth of the time. It stands in the project, where it finds its packages. */
async function bundled(): Promise<string> {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const outDir = join(root, '.cache/bench');
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['better-sqlite3', 'pg'] },
    build: {
      ssr: 'bench/kills/writer.ts',
      outDir,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'writer-to-kill.mjs' } },
    },
  });
  return join(outDir, 'writer-to-kill.mjs');
}

async function start(program: string): Promise<ChildProcess> {
  const writer = spawn(process.execPath, [program], { stdio: ['ignore', 'pipe', 'inherit', 'ipc'] });
  await once(writer, 'message');
  return writer;
}

function killedAt(writer: ChildProcess, task: Task, moment: Moment): Promise<readonly Acknowledged[]> {
  const kill = () => void setTimeout(() => writer.kill('SIGKILL'), moment.afterMs);
  let said = '';
  writer.stdout!.setEncoding('utf8').on('data', (text: string) => {
    if (said === '' && moment.from === 'first-answer') kill();
    said += text;
  });
  if (moment.from === 'start') kill();
  writer.send(task);
  return new Promise((resolve, reject) => {
    writer.once('error', reject);
    writer.once('close', (code, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(`the writer ended by itself with ${code ?? signal}`));
      // The last piece may be a line that was cut off.
      else resolve(said.split('\n').slice(0, -1).map(acknowledgedIn(task.round)));
    });
  });
}

const acknowledgedIn =
  (round: number) =>
  (line: string): Acknowledged => {
    const [, tablet, count, answer] = /^(\d+) (\d+) (.*)$/.exec(line)!;
    return { round, tablet: Number(tablet), count: Number(count), answer: JSON.parse(answer!) };
  };
