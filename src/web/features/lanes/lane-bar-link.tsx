import { Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
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
  /** How its run stands; undefined where there is none yet. */
  readonly state: string | undefined;
  readonly isMovable: boolean;
  readonly isInHand: boolean;
  /** Whether Tab leads here: one run of all the lanes at a time. */
  readonly isEntry: boolean;
  readonly onPoint: () => void;
  readonly onFocus: () => void;
}

/** A run on its lane: setting up is hatched, running is a bar with its gauge, a promise is a mark of its own shape. */
export function LaneBarLink({ bar, day, perMinute, hatch, state, ...rest }: LaneBarLinkProps) {
  const words = useWords(PLAN_WORDS);
  const x = bar.setUpAt * perMinute;
  const runX = bar.runAt * perMinute;
  const end = Math.max(bar.endsAt * perMinute, x + LEAST_BAR);
  const { barTop: y, barHeight: height } = LANE;
  const { lotId } = bar.run;
  const stands = state === undefined ? '' : ` ${words.stateOf(words.runStates[state] ?? state)}`;
  return (
    <Link
      to="/plan/$lotId"
      params={{ lotId }}
      search={{ date: day.date }}
      preload={false}
      id={rest.id}
      tabIndex={rest.isEntry ? 0 : -1}
      className={styles.bar}
      data-lot={lotId}
      data-promise={bar.promise}
      data-state={state}
      data-movable={rest.isMovable || undefined}
      data-in-hand={rest.isInHand || undefined}
      aria-label={`${runSentence(bar.run, day, words)}${stands}`}
      onFocus={rest.onFocus}
      onPointerEnter={rest.onPoint}
    >
      <rect x={x} y={y} width={Math.max(0, runX - x)} height={height} fill={hatch} />
      <rect x={runX} y={y} width={Math.max(0, end - runX)} height={height} className={styles.run} />
      <rect x={x} y={y} width={end - x} height={height} className={styles.outline} />
      <Gauge bar={bar} sign={SIGNS[state ?? ''] ?? ''} x={x} runX={runX} end={end} />
      <PromiseMark bar={bar} x={end} />
      {bar.goesOn && (
        <path d={`M${end - 9} ${y + 9}l6 ${height / 2 - 9}l-6 ${height / 2 - 9}`} className={styles.goesOn} />
      )}
    </Link>
  );
}

/** The signs of the state marks, for what is begun. */
const SIGNS: Readonly<Record<string, string>> = { running: '◐ ', paused: '■ ', closed: '● ' };

interface GaugeProps {
  readonly bar: LaneBar;
  readonly sign: string;
  readonly x: number;
  readonly runX: number;
  readonly end: number;
}

/** How it stands and its gauge, in the running part where they fit, else across the whole bar, else the sign alone or nothing. */
function Gauge({ bar, sign, x, runX, end }: GaugeProps) {
  const { short } = stringKeyInWords(bar.run.stringKey);
  const gauge = short.split(' ')[0] ?? short;
  const fits = (words: string, width: number): boolean => words.length * LANE.letter + AIR <= width;
  const inRun = [sign + short, sign + gauge].find((words) => fits(words, end - runX));
  const across = inRun ?? [sign + gauge, gauge, sign.trim()].find((words) => words && fits(words, end - x));
  if (across === undefined) return null;
  return (
    <text
      x={((inRun === undefined ? x : runX) + end) / 2}
      y={LANE.barTop + LANE.barHeight / 2 + 5}
      textAnchor="middle"
      className={inRun === undefined ? `${styles.gauge} ${styles.onHatch}` : styles.gauge}
    >
      {across}
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
