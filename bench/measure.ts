import { cpus, totalmem } from 'node:os';
import { performance } from 'node:perf_hooks';

/** What a time was measured on: without it a time says nothing. */
export function machineDescription(): string {
  const processors = cpus();
  const gib = (totalmem() / 2 ** 30).toFixed(1);
  return `${processors[0]?.model.trim() ?? 'processor not told'}, ${processors.length} seen, ${gib} GiB, Node ${process.version}`;
}

export interface Timing {
  readonly medianMs: number;
  /** A tenth of the runs took less, and a tenth more. */
  readonly tenthMs: number;
  readonly ninetiethMs: number;
  readonly repeats: number;
}

/** Times `work` after a warm-up of a fifth as many runs, so that the compiler has done its part. */
export function time(work: () => unknown, repeats: number): Timing {
  for (let run = 0; run < Math.ceil(repeats / 5); run++) work();
  const times = Float64Array.from({ length: repeats }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  }).sort();
  const at = (share: number): number => times[Math.min(repeats - 1, Math.floor(share * repeats))]!;
  return { medianMs: at(0.5), tenthMs: at(0.1), ninetiethMs: at(0.9), repeats };
}

/** One line of a bench: the time, its spread, and how it stands to the limit where there is one. */
export function report(what: string, timing: Timing, limitMs?: number): void {
  const { medianMs, tenthMs, ninetiethMs, repeats } = timing;
  const verdict =
    limitMs === undefined ? '' : `, limit ${limitMs} ms: ${medianMs <= limitMs ? 'kept' : 'MISSED'}`;
  console.log(
    `${what}: median ${ms(medianMs)} (${ms(tenthMs)} to ${ms(ninetiethMs)}, ${repeats} runs)${verdict}`,
  );
}

/** How many times as long the plain way takes, measured in the same run. */
export const reportRatio = (what: string, plainWay: Timing, ours: Timing): void =>
  console.log(`${what}: ${(plainWay.medianMs / ours.medianMs).toFixed(1)} times as long as ours`);

const ms = (milliseconds: number): string => `${milliseconds.toPrecision(3)} ms`;
