import type { Progress } from './progress.js';
import { progressOn } from './progress.js';

/** Where a command's words go: answers to standard output, all else to standard error. */
export interface Terminal {
  /** The answer: what a pipe gets. */
  print(text: string): void;
  /** Remarks and faults: what a person sees beside it. */
  remark(text: string): void;
  readonly progress: Progress;
}

export const processTerminal = (): Terminal => ({
  print: (text) => {
    process.stdout.write(`${text}\n`);
  },
  remark: (text) => {
    process.stderr.write(`${text}\n`);
  },
  progress: progressOn(process.stderr),
});
