import { existsSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { checkPlan, optimise } from '../src/core/planning/index.js';
import { machineDescription } from './measure.js';
import { cicirello, type PublishedInstance, valladaRuiz } from './schedules/published-instances.js';

/*
 * How near the plans of published instances come to the best that is known of them, after so many seconds each.
 * The instances carry no licence that lets them be passed on with this project; their folders are told by whoever has them.
 * Run: npx tsx bench/schedules.ts --weighted FOLDER --makespan FOLDER [--seconds 1,10,60]
 */
const option = (name: string): string | undefined => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? undefined : process.argv[at + 1];
};
const seconds = (option('seconds') ?? '1,10,60').split(',').map(Number);

console.log(machineDescription());
tell('Weighted lateness with set-ups, one machine, 60 lots', option('weighted'), cicirello);
tell('End of the last run, unrelated machines with set-ups', option('makespan'), valladaRuiz);

function tell(
  what: string,
  folder: string | undefined,
  read: (folder: string) => readonly PublishedInstance[],
): void {
  if (folder === undefined || !existsSync(folder)) {
    console.log(`${what}: left out, no folder of instances was given`);
    return;
  }
  const instances = read(folder);
  for (const limit of seconds) {
    const gaps = instances.map((instance) => gapAfter(instance, limit));
    const known = gaps.filter((gap) => Number.isFinite(gap));
    const mean = known.reduce((sum, gap) => sum + gap, 0) / known.length;
    console.log(`${what}, ${limit} s each: mean gap ${percent(mean)} over ${known.length} of ${gaps.length}`);
    instances.forEach(({ name, best }, at) => {
      console.log(`  ${name}: best known ${best}, ${percent(gaps[at]!)} above`);
    });
  }
}

/** Infinite where the best that is known is nought and the plan's is not. */
function gapAfter({ problem, best, measured }: PublishedInstance, limitSeconds: number): number {
  const end = performance.now() + 1000 * limitSeconds;
  const plan = optimise(problem, {
    seed: 1,
    iterations: Number.MAX_SAFE_INTEGER,
    shouldStop: () => performance.now() >= end,
  });
  const check = checkPlan(problem, plan);
  if (check.faults.length > 0) throw new Error(`a law is broken: ${check.faults[0]!.code}`);
  const found = check.score[measured];
  return found === best ? 0 : found / best - 1;
}

function percent(share: number): string {
  return Number.isFinite(share) ? `${(100 * share).toFixed(2)} %` : 'no share, the best being nought';
}
