import { type ChildProcess, spawn } from 'node:child_process';
import { packageRoot } from '../../src/workshop/index.js';

/** `tautwork serve` in a process of its own. */
export interface Serving {
  readonly child: ChildProcess;
  /** Its exit code. */
  readonly ended: Promise<number | null>;
  /** Waits until it has printed what is looked for. */
  readonly seen: (pattern: RegExp) => Promise<RegExpExecArray>;
  readonly out: () => string;
  readonly said: () => string;
}

export const PROGRAM = new URL('bin/tautwork.mjs', packageRoot()).pathname;

const running: ChildProcess[] = [];

/** Starts `tautwork serve` as a person does, at any free port. */
export function serve(folder: string, ...words: readonly string[]): Serving {
  const child = spawn(process.execPath, [PROGRAM, 'serve', '--port', '0', ...words], { cwd: folder });
  running.push(child);
  let out = '';
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (part: string) => {
    out += part;
  });
  child.stderr.setEncoding('utf8').on('data', (part: string) => {
    said += part;
  });
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve));
  const seen = async (pattern: RegExp) => {
    while (!pattern.test(out)) await new Promise((resolve) => child.stdout.once('data', resolve));
    return pattern.exec(out)!;
  };
  return { child, ended, seen, out: () => out, said: () => said };
}

/** Ends every one that a test left running. */
export function endServing(): void {
  for (const child of running.splice(0)) child.kill('SIGKILL');
}
