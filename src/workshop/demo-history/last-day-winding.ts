import { invariant } from '../../core/foundation/index.js';
import { pauseRun } from '../production/pause-run.js';
import { recordTally } from '../production/record-tally.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { spoolsOf } from './choose-runs.js';
import { type RunOfToday, type RunsOfToday, runToBegin } from './last-day-plan.js';
import { actsAtMachine, actsOfBeginning, type RunInHand, runInHand } from './wind-run.js';

/** How far each machine comes by eleven: one run is ended, goes on, or was stopped; the others wait. */
type HowFar = 'ended' | 'running' | 'paused';
const BY_ELEVEN: readonly (readonly [machine: string, howFar: HowFar, startMinute: number])[] = [
  ['bench', 'ended', 456],
  ['old-heron', 'ended', 456],
  ['twin-finch', 'paused', 458],
  ['wren', 'running', 520],
];
/** The longest of a machine's runs is taken to go on; the shortest to be ended. */
const isShort = (howFar: HowFar): boolean => howFar === 'ended';
const FROM_THE_CHECK = 6;

/** What the winders did on the last morning. */
export function actsOfLanes(day: HistoryDay, lanes: RunsOfToday): readonly Act[] {
  const taken = new Set<string>();
  return BY_ELEVEN.flatMap(([machine, howFar, startMinute]) => {
    const bySize = [...(lanes.get(machine) ?? [])].sort((a, b) => a.quantity - b.quantity);
    const hand = firstInHand(day, isShort(howFar) ? bySize : bySize.reverse(), taken);
    if (!hand) return [];
    for (const spoolId of spoolsOf(hand.run)) taken.add(spoolId);
    return isShort(howFar)
      ? actsAtMachine(day, hand, startMinute)
      : actsOfHalfARun(day, hand, { startMinute, isPaused: howFar === 'paused' });
  });
}

/** The first of these runs for which the wire lies there. */
function firstInHand(
  day: HistoryDay,
  runs: readonly RunOfToday[],
  taken: ReadonlySet<string>,
): RunInHand | undefined {
  for (const planned of runs) {
    const run = runToBegin(day, planned, taken);
    if (run) return runInHand(day.book, run, planned);
  }
  return undefined;
}

function actsOfHalfARun(
  day: HistoryDay,
  hand: RunInHand,
  { startMinute, isPaused }: { readonly startMinute: number; readonly isPaused: boolean },
): readonly Act[] {
  const begun = actsOfBeginning(day, hand, startMinute);
  const last = begun.at(-1);
  invariant(last, 'a run is begun by somebody');
  const { by } = last;
  const minute = Math.min(last.minute, 640) + FROM_THE_CHECK;
  const stop: Act = { minute: minute + 1, by, work: (shop) => pause(shop, hand) };
  return [
    ...begun.map((act) => ({ ...act, minute: Math.min(act.minute, minute) })),
    { minute, by, work: (shop) => countHalf(shop, day, hand) },
    ...(isPaused ? [stop] : []),
  ];
}

async function countHalf({ ask }: InHand, { book }: HistoryDay, { runId, run }: RunInHand): Promise<void> {
  const of = { runId, station: 'winder' } as const;
  const count = Math.max(1, Math.floor(run.quantity / 2));
  await ask(recordTally, { id: book.newId(), ...of, outcome: 'good', reason: '', count });
  const reason = run.spec.kind === 'wound' ? 'gap in the wrap' : 'kinked';
  await ask(recordTally, { id: book.newId(), ...of, outcome: 'scrap', reason, count: 1 });
}

async function pause({ ask }: InHand, { runId, version }: RunInHand): Promise<void> {
  await ask(pauseRun, { runId, expectedVersion: version });
}
