import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PlanProblem } from '../../src/core/planning/index.js';
import type { SetUpTraits } from '../../src/core/winding/index.js';

/** A problem in print, and the best that is known of it. */
export interface PublishedInstance {
  readonly name: string;
  readonly problem: PlanProblem;
  readonly best: number;
  /** What of the score it is about. */
  readonly measured: 'weightedLateMinutes' | 'makespanMinutes';
}

/** One machine, set-ups, weighted lateness: V. A. Cicirello 2003; optima by Tanaka & Araki 2013. */
export function cicirello(folder: string): readonly PublishedInstance[] {
  const optima = csv(join(folder, 'optimal.csv')).map(
    ([number, , , , optimum]) => [number!, Number(optimum)] as const,
  );
  return optima.map(([number, best]) => {
    const [sizes, process, weight, due, ...setUp] = numbersIn(join(folder, `wt_sds_${number}.txt`));
    const lots = sizes![0]!;
    const changeOver = changeBy((from, to) => setUp[from < 0 ? lots : from]![to]!);
    const machine = { id: '0', shifts: OPEN, changeOver };
    const jobs = process!.map((processMinutes, job) => ({
      id: String(job),
      traits: traitsOf(job),
      eligible: [{ machineId: '0', processMinutes }],
      releaseMinute: 0,
      dueMinute: due![job]!,
      weight: weight![job]!,
    }));
    return {
      name: `wt_sds_${number}`,
      problem: { jobs, machines: [machine] },
      best,
      measured: 'weightedLateMinutes',
    };
  });
}

/** Unrelated machines, set-ups, end of the last run: Vallada & Ruiz 2011. Best by sequences that were worked out anew. */
export function valladaRuiz(folder: string): readonly PublishedInstance[] {
  const best = new Map(
    csv(join(folder, 'best-known.csv')).map(([name, , , , value]) => [name!, Number(value)]),
  );
  const files = readdirSync(folder).filter((file) => file.startsWith('I_'));
  return files.map((file) => {
    const name = file.replace('.txt', '');
    const [sizes, ...rows] = numbersIn(join(folder, file));
    const [lots, count] = sizes as [number, number];
    const machines = Array.from({ length: count }, (_, machine) => {
      const setUp = rows.slice(lots * (machine + 1), lots * (machine + 2));
      const changeOver = changeBy((from, to) => (from < 0 ? 0 : setUp[from]![to]!));
      return { id: String(machine), shifts: OPEN, changeOver };
    });
    const jobs = rows.slice(0, lots).map((process, job) => ({
      id: String(job),
      traits: traitsOf(job),
      eligible: process.map((processMinutes, machine) => ({ machineId: String(machine), processMinutes })),
      releaseMinute: 0,
      weight: 1,
    }));
    return { name, problem: { jobs, machines }, best: best.get(name)!, measured: 'makespanMinutes' };
  });
}

const OPEN = [{ fromMinute: 0, toMinute: 1 }];

const traitsOf = (job: number): SetUpTraits => ({
  coreWireId: String(job),
  wrapWireIds: [],
  wrapAlloy: '',
  lengthM: 1,
});

const changeBy =
  (minutes: (from: number, to: number) => number) => (from: SetUpTraits | undefined, to: SetUpTraits) => ({
    minutes: minutes(from ? Number(from.coreWireId) : -1, Number(to.coreWireId)),
    scrapStrings: 0,
    costMinor: 0,
  });

const csv = (file: string): readonly (readonly string[])[] =>
  readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

const numbersIn = (file: string): readonly (readonly number[])[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) => line.trim().split(/\s+/).map(Number));
