import type { LotOrder } from '../../../core/day/index.js';

/** A lot that somebody holds over the lanes: the place where it would be put down. */
export interface Carry {
  readonly lotId: string;
  readonly machineId: string;
  /** Lots on that machine that it would stand behind, of those that can be moved. */
  readonly place: number;
}

/** Where a lot stands; undefined for one that cannot be moved. */
export function standsAt(order: LotOrder, lotId: string): Carry | undefined {
  for (const { machineId, lotIds } of order) {
    const place = lotIds.indexOf(lotId);
    if (place >= 0) return { lotId, machineId, place };
  }
  return undefined;
}

/** The order with the lot put down where it is held. */
export const orderWith = (order: LotOrder, { lotId, machineId, place }: Carry): LotOrder =>
  order.map((lane) => {
    const others = lane.lotIds.filter((other) => other !== lotId);
    return { ...lane, lotIds: lane.machineId === machineId ? others.toSpliced(place, 0, lotId) : others };
  });

export type CarryStep = 'earlier' | 'later' | 'machine-above' | 'machine-below';

type MiddleOf = (lotId: string) => number | undefined;

/**
 * The lot moved by a step: along its lane, or to the next machine, behind the lots whose middle lies before its own. At an
 * edge it stays.
 */
export function carryStep(order: LotOrder, carry: Carry, step: CarryStep, middleOf: MiddleOf): Carry {
  const at = order.findIndex(({ machineId }) => machineId === carry.machineId);
  const most = order[at]?.lotIds.filter((lotId) => lotId !== carry.lotId).length ?? 0;
  if (step === 'earlier') return { ...carry, place: Math.max(0, carry.place - 1) };
  if (step === 'later') return { ...carry, place: Math.min(most, carry.place + 1) };
  const next = order[step === 'machine-above' ? at - 1 : at + 1];
  if (!next) return carry;
  const place = placeBefore(next.lotIds, carry.lotId, middleOf(carry.lotId) ?? 0, middleOf);
  return { ...carry, machineId: next.machineId, place };
}

/** How many of the lots on a lane, the one in hand left out, have their middle before a place along it. */
export const placeBefore = (
  lotIds: readonly string[],
  inHand: string,
  at: number,
  middleOf: MiddleOf,
): number =>
  lotIds.filter((lotId) => lotId !== inHand && (middleOf(lotId) ?? Number.POSITIVE_INFINITY) < at).length;

export const isSamePlace = (a: Carry | undefined, b: Carry | undefined): boolean =>
  a?.lotId === b?.lotId && a?.machineId === b?.machineId && a?.place === b?.place;
