import assert from 'node:assert/strict';
import { SIMULATED_MACHINES, type SimulatedKind } from '../src/core/winding/index.js';
import { type Comparison, compareRules, isAsGood, type RuleResult } from './dial-in/compare.js';
import { inHindsight, oneForAll } from './dial-in/equal-quality.js';
import { machineDescription } from './measure.js';

/*
 * Dial-ins on simulated machines: our rule against rules in print, all making equally good runs.
 * Run: npx tsx bench/dial-in.ts [dial-ins on each machine] [seed] [past runs: 0, 5, or both where left out]
 */
const count = Number(process.argv[2] ?? 10_000);
const seed = Number(process.argv[3] ?? 40_000_000);
const pasts = process.argv[4] === undefined ? [0, 5] : [Number(process.argv[4])];
const kinds = Object.keys(SIMULATED_MACHINES) as SimulatedKind[];
/** Rules that ours is to be better than. */
const RIVALS = ['full', 'harmonic', 'EWMA'];
/** Two good strings in a hundred: no rule is called equal that differs by more. */
const EQUAL_WITHIN = 0.02;

console.log(`${machineDescription()}; ${count} dial-ins on each machine, seed ${seed}`);
console.log(
  'Strings wound until the run was let go: median, 75 %, 95 %, mean | of these out of tolerance, mean | good strings of the run in 100: mean, worst twentieth',
);

for (const pastRuns of pasts) {
  const comparisons = kinds.map((kind) => compareRules(SIMULATED_MACHINES[kind], { pastRuns, count, seed }));
  const common = oneForAll(comparisons);
  kinds.forEach((kind, index) => {
    const comparison = comparisons[index]!;
    const hindsight = inHindsight(comparison);
    tell(kind, pastRuns, comparison);
    for (const [name, result] of hindsight) {
      console.log(row(`${name}, released best for it`, result));
      if (result) holdEqual(comparison, result);
    }
    for (const [name, results] of common) console.log(row(`${name}, one release for all`, results[index]));
    verdict('released best for each machine', comparison, (name) => hindsight.get(name));
    verdict('one release for all machines', comparison, (name) => common.get(name)?.[index]);
  });
  goal(`${pastRuns} past runs, median at most ${pastRuns === 0 ? 'that' : 'half'} of harmonic's`, (index) => {
    const harmonic = inHindsight(comparisons[index]!).get('harmonic');
    const times = pastRuns === 0 ? 1 : 0.5;
    return !harmonic || comparisons[index]!.ours.strings.median <= times * harmonic.strings.median;
  });
  goal(`${pastRuns} past runs, 95 % better than full, harmonic and EWMA`, (index) => {
    const hindsight = inHindsight(comparisons[index]!);
    const { p95 } = comparisons[index]!.ours.strings;
    return RIVALS.every((name) => p95 < (hindsight.get(name)?.strings.p95 ?? Number.POSITIVE_INFINITY));
  });
}

/** Where a goal is reached against rules released best for each machine, and where not. */
function goal(what: string, isReached: (index: number) => boolean): void {
  const missed = kinds.filter((_, index) => !isReached(index));
  console.log(
    `\nGoal, ${what}: ${kinds.length - missed.length} of ${kinds.length}${missed.length > 0 ? `; not ${missed.join(', ')}` : ''}`,
  );
}

function tell(
  kind: string,
  pastRuns: number,
  { ours, perfectGood, saidSure, wasGood, moves }: Comparison,
): void {
  console.log(`\n${kind}, ${pastRuns} past runs of the family`);
  console.log(`  said sure ${percent(saidSure)}, was so ${percent(wasGood)}; ${moves.toFixed(2)} moves`);
  console.log(row('ours', ours));
  console.log(
    `  ${'perfect knowledge'.padEnd(44)}   1   1   1   1.00 | 0.00 | ${percent(perfectGood.mean)} ${percent(perfectGood.p05)}`,
  );
}

function row(name: string, result: RuleResult | undefined): string {
  if (!result) return `  ${name.padEnd(44)}   never as good`;
  const { strings, outOfTolerance, good, release } = result;
  const figures = [strings.median, strings.p75, strings.p95].map((each) => String(each).padStart(4)).join('');
  const how = release
    ? ` | after ${release.least}${release.within > 1e6 ? '' : `, ${release.inARow} within ${release.within}`}${release.moveLast ? '' : ', last not moved for'}`
    : '';
  return `  ${name.padEnd(44)}${figures}${strings.mean.toFixed(2).padStart(7)} | ${outOfTolerance.toFixed(2)} | ${percent(good.mean)} ${percent(good.p05)}${how}`;
}

function holdEqual({ ours }: Comparison, result: RuleResult): void {
  assert.ok(isAsGood(result, ours));
  assert.ok(Math.abs(result.good.mean - ours.good.mean) < EQUAL_WITHIN, `${result.name} is not equal`);
}

function verdict(
  how: string,
  { ours }: Comparison,
  resultOf: (name: string) => RuleResult | undefined,
): void {
  const harmonic = resultOf('harmonic');
  const ratio = harmonic ? `${ours.strings.median} to ${harmonic.strings.median}` : 'harmonic never as good';
  const tails = RIVALS.map((name) => {
    const result = resultOf(name);
    if (!result) return `${name} never as good`;
    const { p95 } = result.strings;
    return `${ours.strings.p95 < p95 ? 'better than' : ours.strings.p95 === p95 ? 'equal to' : 'WORSE THAN'} ${name} (${p95})`;
  });
  console.log(`  ${how}: median ${ratio}; 95 %: ${ours.strings.p95}, ${tails.join(', ')}`);
}

function percent(share: number): string {
  return (100 * share).toFixed(2);
}
