import { fail, type Result, succeed } from '../foundation/index.js';
import { monotoneInterpolation } from '../numeric/index.js';
import type { DialRow, GearWinder } from './machine.js';

export interface DialSetting {
  readonly dial: number;
  /** Traverse per spindle turn that the dial really gives. */
  readonly pitchM: number;
}

export type DialFault =
  | {
      readonly code: 'winding.pitch-outside-range';
      readonly wantedM: number;
      readonly leastM: number;
      readonly mostM: number;
      /** The nearest that the machine can give without turns that climb; left out where all would. */
      readonly nearestM?: number;
    }
  | {
      readonly code: 'winding.dial-table-unusable';
      /** The table must have two rows or more, dial ascending, traverse all rising or all falling. */
      readonly rows: readonly DialRow[];
    };

/**
 * The dial step of a gear machine that comes nearest to a wished wrap pitch without falling below the pitch
 * at which turns touch (there they would climb on one another). Between measured rows the traverse is read
 * off a smooth curve that keeps the table's direction (monotone cubic). Metres; steps count from the table's
 * first row. A wish outside what the box can give, or less than a step from its end, is a fault that names
 * the range and the nearest.
 */
export function dialForPitch(
  machine: Pick<GearWinder, 'dialTable' | 'dialStep'>,
  wanted: { readonly pitchM: number; readonly touchingPitchM: number },
): Result<DialSetting, DialFault> {
  const rows = machine.dialTable;
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (!first || !last || !isDialTableUsable(machine)) {
    return fail({ code: 'winding.dial-table-unusable', rows });
  }
  const nearest = nearestStep(stepsOf(machine.dialStep, rows), wanted);
  const leastM = Math.min(first.traversePerTurnM, last.traversePerTurnM);
  const mostM = Math.max(first.traversePerTurnM, last.traversePerTurnM);
  if (!nearest || wanted.pitchM < leastM || wanted.pitchM > mostM) {
    return fail({
      code: 'winding.pitch-outside-range',
      wantedM: wanted.pitchM,
      leastM,
      mostM,
      ...(nearest && { nearestM: nearest.pitchM }),
    });
  }
  return succeed(nearest);
}

/** Whether a pitch can be read off: two rows or more, dial ascending, traverse all rising or all falling, a step above 0. */
export function isDialTableUsable({
  dialTable: rows,
  dialStep,
}: Pick<GearWinder, 'dialTable' | 'dialStep'>): boolean {
  if (dialStep <= 0) return false;
  const steps = rows.slice(1).map((row, index) => ({
    dial: row.dial - rows[index]!.dial,
    traverse: row.traversePerTurnM - rows[index]!.traversePerTurnM,
  }));
  const direction = Math.sign(steps[0]?.traverse ?? 0);
  return (
    direction !== 0 && steps.every(({ dial, traverse }) => dial > 0 && Math.sign(traverse) === direction)
  );
}

/** The dial's steps between the table's ends, ranked by rising pitch. */
interface DialSteps {
  readonly count: number;
  pitchOf(rank: number): number;
  settingOf(rank: number): DialSetting;
}

function stepsOf(dialStep: number, rows: readonly DialRow[]): DialSteps {
  const first = rows[0]!;
  const last = rows[rows.length - 1]!;
  const rising = last.traversePerTurnM > first.traversePerTurnM;
  const pitchAt = monotoneInterpolation(
    rows.map(({ dial }) => dial),
    rows.map(({ traversePerTurnM }) => traversePerTurnM),
  );
  const count = Math.floor((last.dial - first.dial) / dialStep + STEP_ROUNDING) + 1;
  const within = (dial: number): number => Math.max(first.dial, Math.min(last.dial, dial));
  const dialOf = (rank: number): number => first.dial + (rising ? rank : count - 1 - rank) * dialStep;
  return {
    count,
    pitchOf: (rank) => pitchAt(within(dialOf(rank))),
    settingOf(rank) {
      const dial = within(tidy(dialOf(rank)));
      return { dial, pitchM: pitchAt(dial) };
    },
  };
}

/** So that twenty steps of 0.05 make a whole one. */
const STEP_ROUNDING = 1e-9;
const tidy = (dial: number): number => Number(dial.toPrecision(12));

function nearestStep(
  steps: DialSteps,
  wanted: { readonly pitchM: number; readonly touchingPitchM: number },
): DialSetting | undefined {
  const above = firstRankFrom(steps, wanted.pitchM);
  const neighbours = [above - 1, above]
    .filter((rank) => rank >= 0 && rank < steps.count)
    .map((rank) => steps.settingOf(rank))
    .filter(({ pitchM }) => pitchM >= wanted.touchingPitchM * (1 - PITCH_ROUNDING));
  const [one, other] = neighbours;
  if (!one || !other) return one;
  return wanted.pitchM - one.pitchM < other.pitchM - wanted.pitchM ? one : other;
}

/** A pitch that equals the touching pitch but for rounding touches; it does not climb. */
const PITCH_ROUNDING = 1e-9;

/** Lowest rank whose pitch is no less than `pitchM`; the count of steps where all are less. */
function firstRankFrom(steps: DialSteps, pitchM: number): number {
  let low = 0;
  let high = steps.count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (steps.pitchOf(middle) < pitchM * (1 - PITCH_ROUNDING)) low = middle + 1;
    else high = middle;
  }
  return low;
}
