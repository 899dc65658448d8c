import type { Need } from '../../contract/index.js';
import { isDryEnough } from '../../core/stock/index.js';
import { dryRoomLimits } from '../dry-room/dry-room-limits.js';
import type { NeedsOf } from './needs-of.js';

/** How long a room may go without a reading. */
const SILENT_AFTER_MS = 24 * 3_600_000;
/** Rooms that were read in the last so many readings are those in use. */
const LOOKED_AT = 200;

/** Rooms whose last reading lies outside of the limits, and rooms that nobody has read for a day. */
export const dryRoomNeeds: NeedsOf = async ({ records }, now) => {
  const limits = await dryRoomLimits({ records });
  const read = await records.between('dry-room-reading', 'at', { last: LOOKED_AT });
  const last = new Map(read.map(({ body }) => [body.room, body]));
  if (last.size === 0) return [{ kind: 'dry-room-silent', urgency: 'soon', room: '' }];
  return [...last.values()].flatMap(({ room, at, temperatureC, relativeHumidity }): Need[] => {
    if (Date.parse(now) - Date.parse(at) > SILENT_AFTER_MS)
      return [{ kind: 'dry-room-silent', urgency: 'soon', room, since: at }];
    if (isDryEnough({ temperatureC, relativeHumidity }, limits)) return [];
    return [
      { kind: 'dry-room-out', urgency: 'now', room, temperatureC, relativeHumidity, limits, since: at },
    ];
  });
};
