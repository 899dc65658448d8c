import { grouped } from '../../foundation/index.js';
import { CHANGE_KINDS, type ChangeKind } from './change-kind.js';
import { learnMinutes } from './learn-minutes.js';
import { learnScrap } from './learn-scrap.js';
import { LEAST_FIGURE, type LearnedChanges } from './learned-change.js';
import type { PastSetUp } from './past-set-up.js';

/** With so many set-ups of a kind on a machine the shop plans by what it learned of them; before, by the machine's record. A choice
 * of ours: by then they weigh as much as the record. */
export const LEAST_SET_UPS = 5;

/** One figure: what the machine's record says on average, what is learned, and the middle nine tenths of where that may lie. */
export interface LearnedFigure {
  readonly setUps: number;
  readonly figure: number;
  readonly learned: number;
  readonly low: number;
  readonly high: number;
}

/** What is learned of one kind of change on one machine. */
export interface ChangeLearned {
  readonly machineId: string;
  readonly kind: ChangeKind;
  readonly setUps: number;
  readonly scrap: LearnedFigure;
  /** Left out where no set-up tells how long it took. */
  readonly minutes?: LearnedFigure;
  /** Whether the plan goes by it. */
  readonly isUsed: boolean;
  readonly scrapTimes: number;
  /** Left out where too few set-ups tell their minutes. */
  readonly minutesTimes?: number;
}

/** What a shop's set-ups teach, machine by machine and kind by kind. */
export function learnChanges(setUps: readonly PastSetUp[]): readonly ChangeLearned[] {
  return [...grouped(setUps, ({ machineId }) => machineId)].flatMap(([machineId, ofMachine]) => {
    const byKind = grouped(ofMachine, ({ kind }) => kind);
    return CHANGE_KINDS.flatMap((kind) => {
      const own = byKind.get(kind);
      const others = [...byKind].filter(([each]) => each !== kind).map(([, ofKind]) => ofKind);
      return own ? [learnKind(machineId, kind, own, others)] : [];
    });
  });
}

function learnKind(
  machineId: string,
  kind: ChangeKind,
  own: readonly PastSetUp[],
  others: readonly (readonly PastSetUp[])[],
): ChangeLearned {
  const scrap = learnScrap(own, others);
  const minutes = learnMinutes(own, others);
  const figureScrap = meanOf(own, ({ figureScrap }) => Math.max(figureScrap, LEAST_FIGURE));
  const figureMinutes = meanOf(own, (setUp) => setUp.figureMinutes);
  return {
    machineId,
    kind,
    setUps: own.length,
    scrap: {
      setUps: own.length,
      ...scaled(scrap, figureScrap),
      figure: meanOf(own, (each) => each.figureScrap),
    },
    ...(minutes ? { minutes: { setUps: minutes.setUps, ...scaled(minutes, figureMinutes) } } : {}),
    isUsed: own.length >= LEAST_SET_UPS,
    scrapTimes: scrap.times,
    ...(minutes && minutes.setUps >= LEAST_SET_UPS ? { minutesTimes: minutes.times } : {}),
  };
}

const scaled = (
  { times, low, high }: { readonly times: number; readonly low: number; readonly high: number },
  figure: number,
) => ({ figure, learned: figure * times, low: figure * low, high: figure * high });

const meanOf = (setUps: readonly PastSetUp[], of: (setUp: PastSetUp) => number): number =>
  setUps.reduce((sum, setUp) => sum + of(setUp), 0) / setUps.length;

/** What a machine's plan goes by: the kinds of which there are enough set-ups. */
export function learnedOf(learned: readonly ChangeLearned[], machineId: string): LearnedChanges {
  const used = learned.filter((each) => each.isUsed && each.machineId === machineId);
  return Object.fromEntries(
    used.map(({ kind, setUps, scrapTimes, minutesTimes }) => [
      kind,
      { setUps, scrapTimes, ...(minutesTimes === undefined ? {} : { minutesTimes }) },
    ]),
  );
}
