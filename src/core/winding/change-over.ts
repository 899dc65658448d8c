import type { ChangedPart } from './changed-part.js';
import { changeKind } from './learn-changes/change-kind.js';
import { LEAST_FIGURE } from './learn-changes/learned-change.js';
import type { Machine } from './machine.js';
import type { SetUpTraits } from './set-up-traits.js';

export interface ChangeOverWork {
  readonly minutes: number;
  /** Strings expected to be lost while the machine is dialled in. */
  readonly scrapStrings: number;
  readonly changes: readonly ChangedPart[];
  /** How many set-ups of this kind on this machine the figures are learned from; left out where they are the machine's own. */
  readonly learnedFrom?: number;
}

/**
 * Minutes and scrap of changing a machine from one run to the next. The parts that differ add up, on top of
 * the machine's base; where nothing differs the next string is wound like the last and it costs nothing.
 * Where the shop has enough set-ups of the kind on the machine, what it learned of them multiplies the sum.
 * `from` undefined is a machine on which nothing stands: everything has to be set up.
 */
export function changeOver(machine: Machine, from: SetUpTraits | undefined, to: SetUpTraits): ChangeOverWork {
  const changes = changedParts(from, to);
  if (changes.length === 0) return { minutes: 0, scrapStrings: 0, changes };
  const { changeMinutes, changeScrap } = machine;
  const minutes = changes.reduce((sum, part) => sum + changeMinutes[part], changeMinutes.base);
  const scrapStrings = changes.reduce(
    (sum, part) => (part === 'length' ? sum : sum + changeScrap[part]),
    changeScrap.base,
  );
  const kind = changeKind(changes);
  const learned = kind && machine.changeLearned?.[kind];
  if (!learned) return { minutes, scrapStrings, changes };
  return {
    minutes: minutes * (learned.minutesTimes ?? 1),
    scrapStrings: Math.max(scrapStrings, LEAST_FIGURE) * learned.scrapTimes,
    changes,
    learnedFrom: learned.setUps,
  };
}

function changedParts(from: SetUpTraits | undefined, to: SetUpTraits): readonly ChangedPart[] {
  const wound = to.wrapWireIds.length > 0;
  const changes: ChangedPart[] = [];
  if (from?.coreWireId !== to.coreWireId) changes.push('core');
  if (wound && (from === undefined || !sameWires(from.wrapWireIds, to.wrapWireIds))) changes.push('wrap');
  if (wound && from?.wrapAlloy !== to.wrapAlloy) changes.push('alloy');
  if (from === undefined || Math.abs(from.lengthM - to.lengthM) > SAME_LENGTH_M) changes.push('length');
  return changes;
}

/** Stops are set by hand: lengths closer than this are the same setting. */
const SAME_LENGTH_M = 0.0005;

const sameWires = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((wireId, layer) => wireId === other[layer]);
