import type { Arrangement, PlannedLot } from './arrange-plan.js';
import type { ClockTime } from './day.js';

/** What another order of the lots does, beside the order as it was. */
export interface ArrangementEffects {
  /** Runs that begin at another time or on another machine, in the order in which they then begin. */
  readonly moved: readonly MovedRun[];
  readonly setUpMinutes: BeforeAndAfter;
  /** Strings scrapped in dialling in. */
  readonly scrapStrings: BeforeAndAfter;
  /** What changing over costs, minor units. */
  readonly changeCostMinor: BeforeAndAfter;
  /** Orders that the move makes late, and orders that it saves from being late. */
  readonly becomeLate: readonly string[];
  readonly saved: readonly string[];
}

export interface MovedRun {
  readonly lotId: string;
  readonly from: Place;
  readonly to: Place;
}

interface Place {
  readonly machineId: string;
  readonly setUpFrom: ClockTime;
  readonly ends: ClockTime;
}

export interface BeforeAndAfter {
  readonly before: number;
  readonly after: number;
}

/** Compares two arrangements of the same lots. An order is late where any lot that it waits for is. */
export function arrangementEffects(
  before: Arrangement,
  after: Arrangement,
  lots: readonly Pick<PlannedLot, 'lotId' | 'orderIds'>[],
): ArrangementEffects {
  const sum = (measure: (run: Arrangement['runs'][number]) => number): BeforeAndAfter => ({
    before: before.runs.reduce((total, run) => total + measure(run), 0),
    after: after.runs.reduce((total, run) => total + measure(run), 0),
  });
  const lateBefore = lateOrders(before, lots);
  const lateAfter = lateOrders(after, lots);
  return {
    moved: movedRuns(before, after),
    setUpMinutes: sum(({ setUpMinutes }) => setUpMinutes),
    scrapStrings: sum(({ scrapStrings }) => scrapStrings),
    changeCostMinor: { before: before.score.changeCostMinor, after: after.score.changeCostMinor },
    becomeLate: [...lateAfter].filter((orderId) => !lateBefore.has(orderId)),
    saved: [...lateBefore].filter((orderId) => !lateAfter.has(orderId)),
  };
}

function movedRuns(before: Arrangement, after: Arrangement): readonly MovedRun[] {
  const was = new Map(before.runs.map((run) => [run.lotId, run]));
  return after.runs.flatMap((run) => {
    const old = was.get(run.lotId);
    const stays = old && old.machineId === run.machineId && isSame(old.setUpFrom, run.setUpFrom);
    return old && !stays ? [{ lotId: run.lotId, from: placeOf(old), to: placeOf(run) }] : [];
  });
}

const placeOf = ({ machineId, setUpFrom, to }: Arrangement['runs'][number]): Place => ({
  machineId,
  setUpFrom,
  ends: to,
});

const isSame = (a: ClockTime, b: ClockTime): boolean =>
  a.date === b.date && Math.abs(a.minute - b.minute) < 1e-6;

function lateOrders(
  { runs }: Arrangement,
  lots: readonly Pick<PlannedLot, 'lotId' | 'orderIds'>[],
): ReadonlySet<string> {
  const ordersOf = new Map(lots.map(({ lotId, orderIds }) => [lotId, orderIds]));
  return new Set(
    runs.filter(({ lateMinutes }) => lateMinutes > 0).flatMap(({ lotId }) => ordersOf.get(lotId) ?? []),
  );
}
