import { monotoneInterpolation } from '../../../core/numeric/index.js';
import {
  asDialReading,
  type DialQuantity,
  type DialValue,
  type GearWinder,
  type MeasuredTable,
  measuredTable,
  type NextDial,
  nextDial,
  type TableDrift,
  type TurnsToCount,
  tableDrift,
  turnsToCount,
  type WindingMachine,
} from '../../../core/winding/index.js';
import type { DialRound } from './use-dial-rounds.js';

type Winder = Omit<WindingMachine, 'id'>;

/** How a round stands: what is to be read next, and what the readings say so far. */
export interface RoundNow {
  readonly next: NextDial;
  /** For the next reading of a traverse. */
  readonly turns: TurnsToCount | undefined;
  readonly table: MeasuredTable | undefined;
  readonly drift: TableDrift | undefined;
}

export function roundNow(round: DialRound, machine: Winder, inForce: readonly DialValue[]): RoundNow {
  const { dials, readings, readingError, wantedShare, quantity } = round.body;
  const counted = readings.flatMap((each) => asDialReading(each, readingError) ?? []);
  const next = nextDial({ dials, readings: counted, inForce, runUp: runUp(machine, quantity, dials) });
  const table = measuredTable(counted);
  return {
    next,
    turns:
      next.kind === 'read' && quantity === 'traverse'
        ? turnsToCount({
            aboutPerTurnM: aboutAt(next.dial, inForce),
            readingErrorM: readingError,
            wantedShare,
            travelM: machine.longestStringM,
          })
        : undefined,
    table,
    drift: table && tableDrift(table, inForce),
  };
}

/** Twentieth of the dial, and more than the play that is on record. No source. */
function runUp(machine: Winder, quantity: DialQuantity, dials: readonly number[]): number {
  const span = (Math.max(...dials) - Math.min(...dials)) / 20;
  if (quantity === 'traverse')
    return tidy(Math.max(span, machine.drive === 'gear' ? 2 * (machine as GearWinder).dialStep : 0));
  const { backlash = 0, deadBand = 0, step = 0 } = machine.knob ?? {};
  return tidy(Math.max(span, 1.5 * (backlash + deadBand) + step));
}

/** What a number gives by the table in force; beyond its ends what its end gives. */
function aboutAt(dial: number, inForce: readonly DialValue[]): number {
  if (inForce.length < 2) return USUAL_PER_TURN_M;
  const curve = monotoneInterpolation(
    inForce.map((row) => row.dial),
    inForce.map((row) => row.value),
  );
  return curve(Math.min(curve.mostX, Math.max(curve.leastX, dial)));
}

const USUAL_PER_TURN_M = 0.0003;

const tidy = (numbers: number): number => Number(numbers.toPrecision(2));
