import { formatGauge, metresFromThou } from '../../../core/units/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import { bandRange, type ExpectedBand, expectedBands, expectedWeight } from './expected-band.js';
import styles from './set-up.module.css';

/** What the first strings should measure and weigh, and how sure that is. */
export function ExpectPart({ sheet }: { readonly sheet: SetUpSheet }) {
  const words = useWords(SET_UP_WORDS);
  const bands = expectedBands(sheet);
  return (
    <section aria-labelledby="expect" className={styles.part}>
      <h2 id="expect">{words.expect}</h2>
      <dl className={styles.huge}>
        {bands.map((band) => (
          <div key={band.name}>
            <dt>{band.name}</dt>
            <dd className={styles.large}>{words.diameter(band.inThou)}</dd>
            <dd className={styles.under}>{band.inMillimetres}</dd>
          </div>
        ))}
        <div>
          <dt>{words.unitWeight}</dt>
          <dd className={styles.large}>{expectedWeight(sheet)}</dd>
          <dd className={styles.under}>{words.bandsAre}</dd>
        </div>
      </dl>
      <BandPicture bands={bands} gaugeThou={sheet.gaugeThou} />
    </section>
  );
}

interface BandPictureProps {
  readonly bands: readonly ExpectedBand[];
  readonly gaugeThou: number;
}

/** The bands on one ruler, with the gauge as a line through them. The figures above say the same. */
function BandPicture({ bands, gaugeThou }: BandPictureProps) {
  const words = useWords(SET_UP_WORDS);
  const { lowM, highM } = bandRange(bands, gaugeThou);
  const xOf = (lengthM: number): number => ((lengthM - lowM) / (highM - lowM)) * BAND.width;
  const height = BAND.top + bands.length * BAND.row;
  const gaugeX = xOf(metresFromThou(gaugeThou));
  const told = bands.map(({ name, inThou }) => words.bandTold(name, inThou)).join('; ');
  return (
    <svg
      viewBox={`0 0 ${BAND.width} ${height}`}
      role="img"
      aria-label={words.bandPicture(formatGauge(gaugeThou), told)}
      className={styles.band}
    >
      <path d={`M${gaugeX} ${BAND.top - 6}V${height}`} className={styles.gaugeLine} />
      <text x={gaugeX} y={BAND.top - 10} textAnchor="middle">
        {words.gauge(formatGauge(gaugeThou))}
      </text>
      {bands.map((band, at) => {
        const y = BAND.top + at * BAND.row;
        return (
          <g key={band.name}>
            <rect
              x={xOf(band.lowM)}
              y={y + 22}
              width={xOf(band.highM) - xOf(band.lowM)}
              height={14}
              className={styles.bandBar}
            />
            <path d={`M${xOf(band.middleM)} ${y + 16}v26`} className={styles.bandMiddle} />
            <text x={0} y={y + 16}>
              {band.name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

const BAND = { width: 640, top: 26, row: 48 } as const;
