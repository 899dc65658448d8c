import { useElementSize, useMergedRef } from '@mantine/hooks';
import { type ReactNode, useId, useRef } from 'react';
import type { Day } from '../../../core/day/index.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { LaneBarLink } from './lane-bar-link.js';
import { LaneClock, LaneMaterials } from './lane-marks.js';
import { LANE } from './lane-measures.js';
import { LaneName } from './lane-name.js';
import { LanesLegend } from './lanes-legend.js';
import type { LaneScope, Lanes } from './lanes-of.js';
import styles from './lanes-picture.module.css';
import { StandingBars } from './standing-bars.js';
import type { Carried, Hand } from './use-hand.js';
import { useHandKeys } from './use-hand-keys.js';
import { useHandPointer } from './use-hand-pointer.js';
import { useKeptFocus } from './use-kept-focus.js';
import { useLaneWalk } from './use-lane-walk.js';

interface LanesPictureProps {
  readonly day: Day;
  readonly lanes: Lanes;
  readonly scope: LaneScope;
  readonly stateOf: (lotId: string) => string | undefined;
  /** Left out where nothing can be moved. */
  readonly hand?: Hand | undefined;
  readonly onPutDown: (carried: Carried) => void;
  /** What stands under the lanes about the run that was last pointed at or walked to. */
  readonly panel: (lotId: string | undefined) => ReactNode;
}

/** One lane for each machine. Tab leads in, arrow keys from run to run, Enter to the set-up sheet; Space and pointer move runs. */
export function LanesPicture({
  day,
  lanes: drawn,
  scope,
  stateOf,
  hand,
  onPutDown,
  panel,
}: LanesPictureProps) {
  const words = useWords(PLAN_WORDS);
  const { axis, lanes } = drawn;
  const { ref: measured, width } = useElementSize();
  const place = useRef<HTMLDivElement>(null);
  const ref = useMergedRef(place, measured);
  const id = useId();
  const idOf = (lotId: string): string => `${id}${lotId}`;
  const walk = useLaneWalk(lanes, idOf);
  const { drawnWidth, nameWidth } = measuresOf(scope, width, axis.length);
  const perMinute = (drawnWidth - nameWidth) / axis.length;
  const bottom = LANE.axisHeight + lanes.length * LANE.height;
  const onKeyDown = useHandKeys({ lanes, hand, onPutDown, walk });
  const pointer = useHandPointer({ lanes, hand, onPutDown, drawnWidth, nameWidth, perMinute });
  const inHand = hand?.carried?.carry.lotId;
  useKeptFocus(place, inHand === undefined ? undefined : idOf(inHand));
  return (
    <>
      <div className={styles.lanes} data-scope={scope}>
        {nameWidth === 0 && (
          <div style={{ paddingTop: LANE.axisHeight }}>
            {lanes.map(({ machine, bars }) => (
              <LaneName key={machine.machineId} machine={machine} runs={bars.length} />
            ))}
          </div>
        )}
        <div ref={ref} className={styles.scroll}>
          {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot stand inside a drawing */}
          <svg
            viewBox={`0 0 ${drawnWidth} ${bottom}`}
            style={{ width: scope === 'day' ? '100%' : drawnWidth }}
            className={styles.drawing}
            aria-labelledby={`${id}title`}
            role="group"
            onKeyDown={onKeyDown}
            {...pointer}
          >
            <title id={`${id}title`}>{hand ? words.lanesTitleMovable : words.lanesTitle}</title>
            <Hatching id={`${id}hatch`} />
            <g transform={`translate(${nameWidth} 0)`}>
              <LaneClock axis={axis} perMinute={perMinute} bottom={bottom} />
            </g>
            {lanes.map((lane, at) => (
              <g
                key={lane.machine.machineId}
                transform={`translate(${nameWidth} ${LANE.axisHeight + at * LANE.height})`}
              >
                <path d={`M0 0H${drawnWidth - nameWidth}`} className={styles.rule} />
                {nameWidth > 0 && (
                  <foreignObject x={-nameWidth} y={0} width={nameWidth} height={LANE.height}>
                    <LaneName machine={lane.machine} runs={lane.bars.length} />
                  </foreignObject>
                )}
                <LaneMaterials lane={lane} perMinute={perMinute} />
                <StandingBars standing={lane.standing} day={day} perMinute={perMinute} />
                {lane.bars.map((bar) => (
                  <LaneBarLink
                    key={bar.run.lotId}
                    id={idOf(bar.run.lotId)}
                    bar={bar}
                    day={day}
                    perMinute={perMinute}
                    hatch={`url(#${id}hatch)`}
                    state={stateOf(bar.run.lotId)}
                    isMovable={hand?.canMove(bar.run.lotId) ?? false}
                    isInHand={bar.run.lotId === inHand}
                    isEntry={bar.run.lotId === walk.entryLotId}
                    onPoint={() => walk.point(bar.run.lotId)}
                    onFocus={() => walk.enter(bar.run.lotId)}
                  />
                ))}
              </g>
            ))}
          </svg>
        </div>
      </div>
      <LanesLegend />
      {panel(walk.touchedLotId)}
    </>
  );
}

/** A day fits its place and takes the names along, to the printer too; a whole plan moves sideways past them. */
function measuresOf(scope: LaneScope, width: number, axisMinutes: number) {
  const room = Math.max(width, LEAST_WIDTH);
  if (scope === 'plan') return { drawnWidth: Math.max(room, axisMinutes * PLAN_SCALE), nameWidth: 0 };
  return { drawnWidth: room, nameWidth: room < NARROW ? LANE.narrowNameWidth : LANE.nameWidth };
}

/** Slanting lines: told from a tone by any eye and any printer. */
const Hatching = ({ id }: { readonly id: string }) => (
  <defs>
    <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0v6" className={styles.hatch} />
    </pattern>
  </defs>
);

const LEAST_WIDTH = 620;
const NARROW = 900;
/** Pixels a minute of the whole plan: wide enough for a gauge in most bars. */
const PLAN_SCALE = 2.4;
