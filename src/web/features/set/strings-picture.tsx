import { useElementSize } from '@mantine/hooks';
import { type NeckLines, neckLines } from '../../../core/sets/index.js';
import { Sideways } from '../../parts/sideways.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { DrawnString } from './drawn-string.js';
import styles from './set-part.module.css';

/** The set as strings drawn to length over a neck, the pull of each as a bar at its end. */
export function StringsPicture({ strings }: { readonly strings: readonly DrawnString[] }) {
  const { ref, width: measured } = useElementSize();
  const { pull: force } = useFigures();
  const { picture } = useWords(SETS_WORDS);
  const width = Math.max(measured, LEAST_WIDTH);
  const lines = neckLines(strings.map(({ speakingLengthM }) => speakingLengthM));
  const neck = { x: NAME_WIDTH, width: (width - NAME_WIDTH) * NECK_SHARE - GAP };
  const bars = { x: neck.x + neck.width + GAP, width: width - neck.x - neck.width - GAP };
  const largestN = Math.max(
    ...strings.flatMap(({ tensionN, wishedTensionN = 0 }) => [tensionN, wishedTensionN]),
  );
  const words = strings
    .map(
      ({ position, note, tensionN, wishedTensionN }) =>
        picture.altString(position, note, force(tensionN)) +
        (wishedTensionN === undefined ? '' : picture.altWished(force(wishedTensionN))),
    )
    .join('; ');
  return (
    <Sideways label={picture.asStrings}>
      <div ref={ref}>
        <svg
          viewBox={`0 0 ${width} ${TOP + strings.length * ROW + 6}`}
          role="img"
          aria-label={picture.alt(words)}
          className={styles.strings}
        >
          <Neck lines={lines} neck={neck} />
          {strings.map((string, at) => (
            <g key={string.position}>
              <text x={0} y={yOf(at) + 5} className={styles.note}>
                {string.position} {string.note}
              </text>
              <StringLine string={string} lines={lines} at={at} neck={neck} />
              <PullOf string={string} y={yOf(at)} bars={bars} largestN={largestN} />
            </g>
          ))}
          <Headings strings={strings} neckX={neck.x} barsX={bars.x} />
        </svg>
      </div>
    </Sideways>
  );
}

interface Band {
  readonly x: number;
  readonly width: number;
}

function Headings({
  strings,
  neckX,
  barsX,
}: {
  readonly strings: readonly DrawnString[];
  readonly neckX: number;
  readonly barsX: number;
}) {
  const { picture } = useWords(SETS_WORDS);
  const { length } = useFigures();
  const lengths = [...new Set(strings.map(({ speakingLengthM }) => length(speakingLengthM)))];
  const [first = '', last = first] = [lengths[0], lengths.at(-1)];
  return (
    <>
      <text x={neckX} y={14} className={styles.quietText}>
        {picture.fromNut(lengths.length === 1 ? first : picture.range(first, last))}
      </text>
      <text x={barsX} y={14} className={styles.quietText}>
        {picture.pulls}
      </text>
    </>
  );
}

/** Nut, saddle and frets as lines through the strings: straight, or fanned. */
function Neck({ lines, neck }: { readonly lines: NeckLines; readonly neck: Band }) {
  const through = (shares: readonly number[]): string => {
    const points = shares.map((share, at) => `${neck.x + share * neck.width} ${yOf(at)}`);
    const [first = '', last = ''] = [points[0], points.at(-1)];
    return points.length === 1 ? `M${first}v1` : `M${first}L${points.slice(1, -1).concat(last).join('L')}`;
  };
  return (
    <>
      {lines.frets.map((shares, fret) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: a fret is known by its number alone
          key={fret}
          d={through(shares)}
          className={styles.fret}
        />
      ))}
      <path d={through(lines.nut)} className={styles.end} />
      <path d={through(lines.saddle)} className={styles.end} />
    </>
  );
}

interface StringLineProps {
  readonly string: DrawnString;
  readonly lines: NeckLines;
  readonly at: number;
  readonly neck: Band;
}

/** A string to length; a wound one shows its turns. */
function StringLine({ string, lines, at, neck }: StringLineProps) {
  const from = neck.x + (lines.nut[at] ?? 0) * neck.width;
  const to = neck.x + (lines.saddle[at] ?? 1) * neck.width;
  const perM = (to - from) / string.speakingLengthM;
  const thickness = string.diameterM * perM * THICKER;
  return (
    <>
      <path d={`M${from} ${yOf(at)}H${to}`} className={styles.string} style={{ strokeWidth: thickness }} />
      {string.kind === 'wound' && (
        <path d={`M${from} ${yOf(at)}H${to}`} className={styles.turns} style={{ strokeWidth: thickness }} />
      )}
      <text x={from + neck.width * 0.03} y={yOf(at) - thickness / 2 - 5} className={styles.quietText}>
        {string.gauge}
      </text>
    </>
  );
}

interface PullOfProps {
  readonly string: DrawnString;
  readonly y: number;
  readonly bars: Band;
  readonly largestN: number;
}

function PullOf({ string: { tensionN, wishedTensionN }, y, bars, largestN }: PullOfProps) {
  const { pull: force } = useFigures();
  const perN = (bars.width - FIGURE_WIDTH) / largestN;
  return (
    <>
      <rect x={bars.x} y={y - 8} width={tensionN * perN} height={16} className={styles.now} />
      {wishedTensionN !== undefined && (
        <path d={`M${bars.x + wishedTensionN * perN} ${y - 13}v26`} className={styles.wished} />
      )}
      <text x={bars.x + bars.width} y={y - 1} textAnchor="end" className={styles.pull}>
        {force(tensionN)}
      </text>
      {wishedTensionN !== undefined && (
        <text x={bars.x + bars.width} y={y + 13} textAnchor="end" className={styles.quietText}>
          {force(wishedTensionN)}
        </text>
      )}
    </>
  );
}

const yOf = (at: number): number => TOP + at * ROW + ROW / 2;

const TOP = 20;
const ROW = 44;
const NAME_WIDTH = 56;
const NECK_SHARE = 0.6;
const GAP = 24;
const FIGURE_WIDTH = 84;
const LEAST_WIDTH = 560;
/** Strings are drawn this many times as thick as to length, or one could not tell a 9 from an 11. */
const THICKER = 4;
