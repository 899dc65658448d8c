import { dateInWords } from '../../../contract/index.js';
import { formatClock } from '../../../core/units/index.js';
import type { LaneAxis, LaneWindow } from './lane-axis.js';
import { LANE } from './lane-measures.js';
import type { Lane } from './lanes-of.js';
import styles from './lanes-picture.module.css';

interface LaneClockProps {
  readonly axis: LaneAxis;
  readonly perMinute: number;
  /** Down to where the lines of the hours run. */
  readonly bottom: number;
}

/** Hours, and dates where there are several, over the lanes. */
export function LaneClock({ axis, perMinute, bottom }: LaneClockProps) {
  const hours = axis.windows.flatMap((window) => hoursOf(window, perMinute));
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus
    <g aria-hidden="true">
      {hours.map(({ x, words, anchor, key }) => (
        <g key={key}>
          <path d={`M${x} ${LANE.axisHeight - 5}V${bottom}`} className={styles.hour} />
          <text x={x} y={LANE.axisHeight - 9} textAnchor={anchor} className={styles.clock}>
            {words}
          </text>
        </g>
      ))}
      {axis.windows.length > 1 &&
        axis.windows.map(({ date, startsAt }) => (
          <g key={date}>
            <path d={`M${startsAt * perMinute} 0V${bottom}`} className={styles.midnight} />
            <text x={startsAt * perMinute + 5} y={11} className={styles.date}>
              {dateInWords(date)}
            </text>
          </g>
        ))}
    </g>
  );
}

interface HourMark {
  readonly key: string;
  readonly x: number;
  readonly words: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

function hoursOf(window: LaneWindow, perMinute: number): readonly HourMark[] {
  const step = perMinute * 60 >= LEAST_HOUR_WIDTH ? 60 : 120;
  const first = Math.ceil(window.fromMinute / step) * step;
  const count = Math.floor((window.toMinute - first) / step) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => first + at * step).map((minute) => ({
    key: `${window.date} ${minute}`,
    x: (window.startsAt + minute - window.fromMinute) * perMinute,
    words: formatClock(minute),
    anchor: minute === window.fromMinute ? 'start' : minute === window.toMinute ? 'end' : 'middle',
  }));
}

interface LaneMaterialsProps {
  readonly lane: Lane;
  readonly perMinute: number;
}

/** Braces under runs of one material that follow each other, with its name where there is room. */
export function LaneMaterials({ lane, perMinute }: LaneMaterialsProps) {
  const y = LANE.barTop + LANE.barHeight + 4;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus
    <g aria-hidden="true">
      {lane.materials.map(({ material, fromAt, toAt }) => {
        const x = fromAt * perMinute;
        const width = (toAt - fromAt) * perMinute - 3;
        return (
          <g key={fromAt}>
            <path d={`M${x} ${y}v3H${x + width}v-3`} className={styles.brace} />
            {width > material.length * LANE.smallLetter && (
              <text x={x + width / 2} y={y + 15} textAnchor="middle" className={styles.material}>
                {material}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

const LEAST_HOUR_WIDTH = 48;
