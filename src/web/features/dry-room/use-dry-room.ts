import { useMemo } from 'react';
import { DRY_ROOM_PRACTICE, type DryRoomLimits } from '../../../core/stock/index.js';
import { useAllRecords, useRecords } from '../../api/use-records.js';
import { isOf, useComing } from '../../outbox/index.js';

/** A fortnight, read twice a day. */
const SHOWN = 28;

export interface RoomReading {
  readonly id: string;
  readonly at: string;
  readonly room: string;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  /** Entered here, and not with the shop yet. */
  readonly isOnTheWay: boolean;
}

/** The last readings of all rooms, the newest first, those that wait on this screen among them. */
export function useDryRoomReadings() {
  const question = useRecords('dry-room-reading', { limit: SHOWN * 2 });
  const coming = useComing();
  const readings = useMemo(() => {
    const known = (question.data?.items ?? []).map(
      ({ id, body }): RoomReading => ({ id, ...body, isOnTheWay: false }),
    );
    const entered = coming.flatMap((entry): readonly RoomReading[] =>
      isOf(entry, 'record-dry-room') ? [{ ...entry.input, at: entry.at, isOnTheWay: true }] : [],
    );
    const ids = new Set(known.map(({ id }) => id));
    return [...entered.filter(({ id }) => !ids.has(id)).toReversed(), ...known];
  }, [question.data, coming]);
  return { question, readings };
}

/** Of one room, as many as are drawn. */
export const lastOf = (readings: readonly RoomReading[], room: string): readonly RoomReading[] =>
  readings.filter((reading) => reading.room === room).slice(0, SHOWN);

/** What the room is held to, and whether the shop said so itself. */
export function useDryRoomLimits(): { readonly limits: DryRoomLimits; readonly isOwn: boolean } {
  const own = useAllRecords('settings').data?.[0]?.body.limits?.dryRoom;
  return { limits: own ?? DRY_ROOM_PRACTICE, isOwn: own !== undefined };
}
