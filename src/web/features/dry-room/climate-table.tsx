import { type DryRoomLimits, isDryEnough } from '../../../core/stock/index.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import type { RoomReading } from './use-dry-room.js';

/** A day of a fast logger; the picture has them all. */
const MOST_SHOWN = 144;

interface ClimateTableProps {
  /** The oldest first. */
  readonly readings: readonly RoomReading[];
  readonly limits: DryRoomLimits;
}

export function ClimateTable({ readings, limits }: ClimateTableProps) {
  const words = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  return (
    <SheetTable
      caption={words.last}
      rows={readings.slice(-MOST_SHOWN).toReversed()}
      rowKey={({ at }) => at}
      columns={[
        { heading: words.when, names: true, whole: true, cell: ({ at }) => figures.moment(at) },
        {
          heading: words.temperature,
          figures: true,
          cell: ({ temperatureC }) => `${figures.number(temperatureC, 1)} ${words.celsius}`,
        },
        {
          heading: words.humidity,
          figures: true,
          cell: ({ relativeHumidity }) => `${figures.number(relativeHumidity * 100, 1)} ${words.percent}`,
        },
        {
          heading: words.standing,
          whole: true,
          cell: (reading) => (
            <>
              {isDryEnough(reading, limits) ? (
                <StateMark tone="done">{words.ok}</StateMark>
              ) : (
                <StateMark tone="care">{words.off}</StateMark>
              )}
              {reading.isOnTheWay && <span className="quiet"> {words.onTheWay}</span>}
            </>
          ),
        },
      ]}
    />
  );
}
