import type { Chance } from '../../foundation/index.js';
import type { SearchFloor } from './search-floor.js';
import type { LaneChange, SearchLanes } from './search-lanes.js';

/** One or two lanes otherwise filled; undefined where what was drawn changes nothing or cannot be. */
export type Move = readonly [LaneChange] | readonly [LaneChange, LaneChange];

const MOST_IN_BLOCK = 10;

/** Draws a move for a lot: the lot, or a block that it leads, to another place, or an exchange with another lot. */
export function drawMove(
  search: SearchFloor,
  lanes: SearchLanes,
  drawn: { readonly lot: number; readonly other: number; readonly chance: Chance },
): Move | undefined {
  const { lot, other, chance } = drawn;
  const kind = chance.next();
  if (kind < 0.3) return exchange(search, lanes, lot, other);
  const from = lanes.machineOf[lot]!;
  const able = search.floor.able[lot]!;
  const to = able.length > 1 && chance.next() < 0.6 ? chance.pick(able) : from;
  const count = kind < 0.65 ? 1 : blockLength(search, lanes, { lot, to, chance });
  return from === to
    ? shiftWithin(search, lanes, { lot, count, chance })
    : shiftAcross(search, lanes, { lot, count, to, chance });
}

interface Block {
  readonly lot: number;
  readonly count: number;
  readonly chance: Chance;
}

/** As many lots behind one another, from the lot on, as the other machine can make; up to a drawn number. */
function blockLength(
  search: SearchFloor,
  lanes: SearchLanes,
  { lot, to, chance }: { readonly lot: number; readonly to: number; readonly chance: Chance },
): number {
  const machine = lanes.machineOf[lot]!;
  const place = lanes.placeOf[lot]!;
  const most = Math.min(chance.whole(2, MOST_IN_BLOCK), lanes.length(machine) - place);
  let count = 1;
  while (count < most && isAble(search, to, lanes.lotAt(machine, place + count))) count++;
  return count;
}

function shiftWithin(search: SearchFloor, lanes: SearchLanes, block: Block): Move | undefined {
  const { lot, count, chance } = block;
  const machine = lanes.machineOf[lot]!;
  const place = lanes.placeOf[lot]!;
  const first = search.frozen[machine]!;
  const last = lanes.length(machine) - count;
  if (last <= first) return undefined;
  const to = chance.whole(first, last);
  if (to === place) return undefined;
  const moved = slice(lanes, machine, place, place + count);
  return to < place
    ? [
        {
          machine,
          keep: to,
          window: [...moved, ...slice(lanes, machine, to, place)],
          tailFrom: place + count,
        },
      ]
    : [
        {
          machine,
          keep: place,
          window: [...slice(lanes, machine, place + count, to + count), ...moved],
          tailFrom: to + count,
        },
      ];
}

function shiftAcross(
  search: SearchFloor,
  lanes: SearchLanes,
  { lot, count, to, chance }: Block & { readonly to: number },
): Move {
  const machine = lanes.machineOf[lot]!;
  const place = lanes.placeOf[lot]!;
  const window = slice(lanes, machine, place, place + count);
  const keep = search.isPlain
    ? bestPlace(search, lanes, to, lot)
    : chance.whole(search.frozen[to]!, lanes.length(to));
  return [
    { machine, keep: place, window: [], tailFrom: place + count },
    { machine: to, keep, window, tailFrom: keep },
  ];
}

/** Where in a lane a lot adds the fewest minutes: what comes behind is only shifted. */
function bestPlace(search: SearchFloor, lanes: SearchLanes, machine: number, lot: number): number {
  const { setUpClass, floor } = search;
  const own = setUpClass[lot]!;
  const length = lanes.length(machine);
  const classAt = (place: number) =>
    place < 0 ? floor.changes.machineClass[machine]! : setUpClass[lanes.lotAt(machine, place)]!;
  const minutes = (from: number, to: number) => search.changes.minutes[search.changes.at(machine, from, to)]!;
  let best = search.frozen[machine]!;
  let least = Number.POSITIVE_INFINITY;
  for (let place = best; place <= length; place++) {
    const before = classAt(place - 1);
    let added = minutes(before, own);
    if (place < length) {
      const after = classAt(place);
      added += minutes(own, after) - minutes(before, after);
    }
    if (added < least) [best, least] = [place, added];
  }
  return best;
}

function exchange(search: SearchFloor, lanes: SearchLanes, lot: number, other: number): Move | undefined {
  if (lot === other) return undefined;
  const [machine, on] = [lanes.machineOf[lot]!, lanes.machineOf[other]!];
  const [place, at] = [lanes.placeOf[lot]!, lanes.placeOf[other]!];
  if (machine !== on) {
    if (!isAble(search, on, lot) || !isAble(search, machine, other)) return undefined;
    return [
      { machine, keep: place, window: [other], tailFrom: place + 1 },
      { machine: on, keep: at, window: [lot], tailFrom: at + 1 },
    ];
  }
  const [low, high] = place < at ? [place, at] : [at, place];
  const window = slice(lanes, machine, low, high + 1);
  window[0] = lanes.lotAt(machine, high);
  window[high - low] = lanes.lotAt(machine, low);
  return [{ machine, keep: low, window, tailFrom: high + 1 }];
}

const isAble = ({ floor }: SearchFloor, machine: number, lot: number): boolean =>
  !Number.isNaN(floor.processMinutes[machine]![lot]!);

function slice(lanes: SearchLanes, machine: number, from: number, to: number): number[] {
  const lots: number[] = [];
  for (let place = from; place < to; place++) lots.push(lanes.lotAt(machine, place));
  return lots;
}
