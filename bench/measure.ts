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

export interface Spread {
  readonly p50Ms: number;
  readonly p95Ms: number;
  readonly p99Ms: number;
  readonly mostMs: number;
  readonly repeats: number;
}

/** Times each of many different questions by itself, one after the other: what people wait for. */
export async function spread(ask: (run: number) => Promise<unknown>, repeats: number): Promise<Spread> {
  for (let run = 0; run < Math.ceil(repeats / 10); run++) await ask(run);
  const times = new Float64Array(repeats);
  for (let run = 0; run < repeats; run++) {
    const from = performance.now();
    await ask(run);
    times[run] = performance.now() - from;
  }
  return spreadOf(times);
}

/** How times taken elsewhere are spread. */
export function spreadOf(taken: ArrayLike<number>): Spread {
  const times = Float64Array.from(taken).sort();
  const repeats = times.length;
  const at = (share: number): number => times[Math.min(repeats - 1, Math.floor(share * repeats))]!;
  return { p50Ms: at(0.5), p95Ms: at(0.95), p99Ms: at(0.99), mostMs: at(1), repeats };
}

/** One line of a bench of questions; the limit is held against the 95th in a hundred. */
export function reportSpread(what: string, spread: Spread, limitMs?: number): void {
  const { p50Ms, p95Ms, p99Ms, mostMs, repeats } = spread;
  const verdict =
    limitMs === undefined ? '' : `, limit p95 ${limitMs} ms: ${p95Ms <= limitMs ? 'kept' : 'MISSED'}`;
  console.log(
    `${what}: p50 ${ms(p50Ms)}, p95 ${ms(p95Ms)}, p99 ${ms(p99Ms)}, most ${ms(mostMs)} (${repeats})${verdict}`,
  );
}
