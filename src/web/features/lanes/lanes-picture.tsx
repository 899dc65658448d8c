import { useElementSize } from '@mantine/hooks';
import { type KeyboardEvent, useId, useState } from 'react';
import { dateInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { formatClock, formatFraction } from '../../../core/units/index.js';
import type { LaneAxis } from './lane-axis.js';
import { LaneBarLink } from './lane-bar-link.js';
import { LANE } from './lane-measures.js';
import { isLaneStep, laneWalk } from './lane-walk.js';
import { LanesLegend } from './lanes-legend.js';
import type { Lane, LaneScope, Lanes } from './lanes-of.js';
import styles from './lanes-picture.module.css';
import { RunPanel } from './run-panel.js';

interface LanesPictureProps {
  readonly day: Day;
  readonly lanes: Lanes;
  readonly scope: LaneScope;
}

/** One lane for each machine. Tab leads in, arrow keys from run to run, Enter to the set-up sheet. */
export function LanesPicture({ day, lanes: { axis, lanes }, scope }: LanesPictureProps) {
  const { ref, width } = useElementSize();
  const id = useId();
  const [touchedLotId, touch] = useState<string>();
  const [entryLotId, enterAt] = useState(lanes.find(({ bars }) => bars.length > 0)?.bars[0]?.run.lotId);
  const room = Math.max(width, LEAST_WIDTH);
  const drawnWidth = scope === 'day' ? room : Math.max(room, axis.length * PLAN_SCALE);
  const perMinute = drawnWidth / axis.length;
  const walk = (event: KeyboardEvent) => {
    if (!entryLotId || !isLaneStep(event.key)) return;
    const next = laneWalk(lanes, entryLotId, event.key);
    event.preventDefault();
    if (next === undefined) return;
    document.getElementById(barId(id, next))?.focus();
  };
  return (
    <>
      <div className={styles.lanes}>
        <div className={styles.names} style={{ paddingTop: LANE.axisHeight }}>
          {lanes.map(({ machine }) => (
            <div key={machine.machineId} className={styles.machine} style={{ height: LANE.height }}>
              <strong>{machine.name}</strong>
              <span>
                {machine.stringsToday} strings, busy {formatFraction(machine.busyShareToday)}
              </span>
            </div>
          ))}
        </div>
        <div ref={ref} className={styles.scroll}>
          {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot stand inside a drawing */}
          <svg
            viewBox={`0 0 ${drawnWidth} ${LANE.axisHeight + lanes.length * LANE.height}`}
            style={{ width: scope === 'day' ? '100%' : drawnWidth }}
            className={styles.drawing}
            aria-labelledby={`${id}title`}
            role="group"
            onKeyDown={walk}
          >
            <title id={`${id}title`}>
              Lanes of the machines over working time. Arrow keys move from run to run.
            </title>
            <Patterns id={id} />
            <Axis axis={axis} perMinute={perMinute} lanes={lanes} />
            {lanes.map((lane, at) => (
              <g
                key={lane.machine.machineId}
                transform={`translate(0 ${LANE.axisHeight + at * LANE.height})`}
              >
                <Materials lane={lane} perMinute={perMinute} />
                {lane.bars.map((bar) => (
                  <LaneBarLink
                    key={bar.run.lotId}
                    id={barId(id, bar.run.lotId)}
                    bar={bar}
                    day={day}
                    perMinute={perMinute}
                    hatch={`url(#${id}hatch)`}
                    isEntry={bar.run.lotId === entryLotId}
                    onTouch={() => touch(bar.run.lotId)}
                    onFocus={() => {
                      enterAt(bar.run.lotId);
                      touch(bar.run.lotId);
                    }}
                  />
                ))}
              </g>
            ))}
          </svg>
        </div>
      </div>
      <LanesLegend />
      <RunPanel day={day} run={day.plan.runs.find(({ lotId }) => lotId === touchedLotId)} />
    </>
  );
}

const barId = (id: string, lotId: string): string => `${id}${lotId}`;

/** Slanting lines: told from a tone by any eye and any printer. */
function Patterns({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}hatch`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0v6" className={styles.hatch} />
      </pattern>
    </defs>
  );
}

interface AxisProps {
  readonly axis: LaneAxis;
  readonly perMinute: number;
  readonly lanes: readonly Lane[];
}

function Axis({ axis, perMinute, lanes }: AxisProps) {
  const bottom = LANE.axisHeight + lanes.length * LANE.height;
  const hours = axis.windows.flatMap((window) => hoursOf(window, perMinute));
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus
    <g aria-hidden="true">
      {lanes.map(({ machine }, at) => {
        const y = LANE.axisHeight + at * LANE.height;
        return (
          <path key={machine.machineId} d={`M0 ${y}H${axis.length * perMinute}`} className={styles.rule} />
        );
      })}
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

function hoursOf(window: LaneAxis['windows'][number], perMinute: number): readonly HourMark[] {
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

function Materials({ lane, perMinute }: { readonly lane: Lane; readonly perMinute: number }) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus
    <g aria-hidden="true">
      {lane.materials.map(({ material, fromAt, toAt }) => {
        const x = fromAt * perMinute;
        const width = (toAt - fromAt) * perMinute - 3;
        const y = LANE.barTop + LANE.barHeight + 4;
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

const LEAST_WIDTH = 480;
const LEAST_HOUR_WIDTH = 48;
/** Pixels a minute of the whole plan: wide enough for a gauge in most bars. */
const PLAN_SCALE = 2.4;
