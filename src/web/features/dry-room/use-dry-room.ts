import { useMemo } from 'react';
import type { DryRoomAir } from '../../../contract/index.js';
import { addDays, type CalendarDate } from '../../../core/foundation/index.js';
import { useReading } from '../../api/use-records.js';
import { isOf, useComing } from '../../outbox/index.js';

export interface RoomReading {
  readonly at: string;
  readonly room: string;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  /** Entered here, and not with the shop yet. */
  readonly isOnTheWay: boolean;
}

/** What a chart shows of the air of a room. */
export interface ShownAir {
  readonly from: string;
  readonly to: string;
  /** The oldest first. */
  readonly readings: readonly RoomReading[];
  readonly excursions: readonly { readonly from: string; readonly to: string }[];
  readonly gaps: readonly { readonly from: string; readonly to: string }[];
}

/** What the shop shows of itself, where nothing else is asked for. */
export const USUAL_DAYS = 28;

interface RoomAsked {
  /** As chosen or typed: perhaps half a name yet. */
  readonly room: string | undefined;
  readonly days: number;
  readonly firstRoom: string;
}

/** The air of a room over some days, and the readings that wait on this screen among those of the shop. */
export function useDryRoomAir({ room: typed, days, firstRoom }: RoomAsked) {
  const usual = useReading('dry-room-air', {});
  const today = useReading('now', {}).data?.today;
  const rooms = usual.data?.rooms ?? [];
  const room = rooms.find((known) => known === typed?.trim()) ?? usual.data?.room ?? '';
  const from = days !== USUAL_DAYS && today ? { from: addDays(today as CalendarDate, 1 - days) } : {};
  const question = useReading('dry-room-air', {
    ...(room === (usual.data?.room ?? '') ? {} : { room }),
    ...from,
  });
  const coming = useComing();
  const air = question.data;
  const entered = useMemo(
    () =>
      coming.flatMap((entry): readonly RoomReading[] =>
        isOf(entry, 'record-dry-room') ? [{ ...entry.input, at: entry.at, isOnTheWay: true }] : [],
      ),
    [coming],
  );
  const named = room || typed?.trim() || firstRoom;
  const shown = useMemo(() => air && withEntered(air, named, entered), [air, named, entered]);
  return { question, shown, rooms, usualRoom: usual.data?.room || firstRoom, limits: usual.data?.limits };
}

function withEntered(air: DryRoomAir, room: string, entered: readonly RoomReading[]): ShownAir {
  const { from, to, excursions, gaps } = air;
  const known = air.readings.map((reading) => ({ ...reading, room, isOnTheWay: false }));
  const own = entered.filter((reading) => reading.room === room && reading.at > from);
  const times = [to, ...own.map(({ at }) => at)].sort();
  return { from, to: times.at(-1) ?? to, excursions, gaps, readings: [...known, ...own] };
}
