import { Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { LANE } from './lane-measures.js';
import type { LaneBar } from './lanes-of.js';
import styles from './lanes-picture.module.css';
import { runSentence } from './run-words.js';

interface LaneBarLinkProps {
  readonly id: string;
  readonly bar: LaneBar;
  readonly day: Day;
  readonly perMinute: number;
  readonly hatch: string;
  /** Whether Tab leads here: one run of all the lanes at a time. */
  readonly isEntry: boolean;
  readonly onPoint: () => void;
  readonly onFocus: () => void;
}

/** A run on its lane: setting up is hatched, running is a bar with its gauge, a promise is a mark of its own shape. */
export function LaneBarLink({ bar, day, perMinute, hatch, ...rest }: LaneBarLinkProps) {
  const x = bar.setUpAt * perMinute;
  const runX = bar.runAt * perMinute;
  const end = Math.max(bar.endsAt * perMinute, x + LEAST_BAR);
  const { barTop: y, barHeight: height } = LANE;
  return (
    <Link
      to="/runs/$lotId"
      params={{ lotId: bar.run.lotId }}
      preload={false}
      id={rest.id}
      tabIndex={rest.isEntry ? 0 : -1}
      className={styles.bar}
      data-promise={bar.promise}
      aria-label={runSentence(bar.run, day)}
      onFocus={rest.onFocus}
      onPointerEnter={rest.onPoint}
    >
      <rect x={x} y={y} width={Math.max(0, runX - x)} height={height} fill={hatch} />
      <rect x={runX} y={y} width={Math.max(0, end - runX)} height={height} className={styles.run} />
      <rect x={x} y={y} width={end - x} height={height} className={styles.outline} />
      <Gauge bar={bar} x={x} runX={runX} end={end} />
      <PromiseMark bar={bar} x={end} />
      {bar.goesOn && (
        <path d={`M${end - 9} ${y + 9}l6 ${height / 2 - 9}l-6 ${height / 2 - 9}`} className={styles.goesOn} />
      )}
    </Link>
  );
}

interface GaugeProps {
  readonly bar: LaneBar;
  readonly x: number;
  readonly runX: number;
  readonly end: number;
}

/** The gauge in the running part where it fits, else across the whole bar, else not at all. */
function Gauge({ bar, x, runX, end }: GaugeProps) {
  const { short } = stringKeyInWords(bar.run.stringKey);
  const gauge = short.split(' ')[0] ?? short;
  const fits = (words: string, width: number): boolean => words.length * LANE.letter + AIR <= width;
  const inRun = [short, gauge].find((words) => fits(words, end - runX));
  if (inRun === undefined && !fits(gauge, end - x)) return null;
  return (
    <text
      x={((inRun === undefined ? x : runX) + end) / 2}
      y={LANE.barTop + LANE.barHeight / 2 + 5}
      textAnchor="middle"
      className={inRun === undefined ? `${styles.gauge} ${styles.onHatch}` : styles.gauge}
    >
      {inRun ?? gauge}
    </text>
  );
}

/** Late: a flag that stands over the bar. Due the day it is done: a lozenge on its edge. */
function PromiseMark({ bar, x }: { readonly bar: LaneBar; readonly x: number }) {
  const y = LANE.barTop;
  if (bar.promise === 'late')
    return <path d={`M${x - 1} ${y + 12}v-20h-14l4 5l-4 5h14z`} className={styles.flag} />;
  if (bar.promise === 'due')
    return <path d={`M${x - 7} ${y - 6}l6 6l-6 6l-6 -6z`} className={styles.lozenge} />;
  return null;
}

const LEAST_BAR = 3;
/** Left free beside a figure. */
const AIR = 8;
