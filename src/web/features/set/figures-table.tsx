import { materialInWords } from '../../../contract/index.js';
import type { Estimate } from '../../../core/numeric/index.js';
import { formatDecimal, formatFraction, formatUnitWeight, pitchName } from '../../../core/units/index.js';
import { useForceWords } from '../../parts/force-unit.js';
import { SectionAcross } from '../../parts/section/section-across.js';
import { sectionOf } from '../../parts/section/section-of.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { gaugeInWords } from '../request/set-words.js';
import styles from './set-part.module.css';
import type { StrungString } from './strung-set.js';

/** Every string cut across, all to one scale, with its figures and how sure they are. */
export function FiguresTable({ strings }: { readonly strings: readonly StrungString[] }) {
  const force = useForceWords();
  const scale = SECTION_SIZE / Math.max(...strings.map(({ body }) => body.meanDiameterM));
  return (
    <>
      <SheetTable
        caption="Sections and figures"
        columns={[
          {
            heading: 'String',
            names: true,
            cell: ({ position, pitch }) => `${position} ${pitchName(pitch)}`,
          },
          {
            heading: 'Cut across',
            cell: ({ recipe, body }) => (
              <div className={styles.cut}>
                <SectionAcross section={sectionOf(recipe, body)} scale={scale} />
              </div>
            ),
          },
          {
            heading: 'Gauge',
            cell: ({ spec }) => (
              <>
                <strong className={styles.gauge}>{gaugeInWords(spec)}</strong>
                <br />
                <span className="quiet">{materialInWords(spec.material)}</span>
              </>
            ),
          },
          { heading: 'Made of', wide: true, cell: ({ recipe }) => <MadeOf recipe={recipe} /> },
          {
            heading: 'Pull',
            figures: true,
            cell: ({ figures: { tensionN } }) => (
              <>
                {force(tensionN.value)}
                <br />
                <span className="quiet">± {force(twice(tensionN))}</span>
              </>
            ),
          },
          {
            heading: 'Stress of strength',
            figures: true,
            cell: ({ figures: { stressShare } }) =>
              stressShare === undefined ? 'strength unknown' : formatFraction(stressShare.value),
          },
          {
            heading: 'Unit weight',
            figures: true,
            cell: ({ figures: { linearDensityKgPerM } }) => (
              <>
                {formatUnitWeight(linearDensityKgPerM.value)}
                <br />
                <span className="quiet">
                  ± {formatFraction(twice(linearDensityKgPerM) / linearDensityKgPerM.value, 1)}
                </span>
              </>
            ),
          },
          {
            heading: 'Inharmonicity B',
            figures: true,
            cell: ({ figures: { inharmonicityB } }) => inMillionths(inharmonicityB.value),
          },
          {
            heading: 'To bend a tone',
            figures: true,
            cell: ({ figures: { bend } }) => (bend ? force(bend.forceN.value) : 'out of reach'),
          },
          {
            heading: 'On shelf',
            figures: true,
            cell: ({ onShelf }) => (onShelf === 0 ? 'none' : onShelf),
          },
        ]}
        middle
        rows={strings}
        rowKey={({ position }) => position}
      />
      <p className={styles.caption}>
        All cut to one scale. Bands are two standard uncertainties. B of the stiff string, f = n f₁ √(1 + B
        n²); a tone is bent at the 12th fret.
      </p>
    </>
  );
}

const SECTION_SIZE = 64;

/** Twice the standard uncertainty covers about 95 % (GUM, JCGM 100:2008, 6.3.3). */
const twice = ({ u }: Estimate): number => 2 * u;

const inMillionths = (share: number): string => `${formatDecimal(share * 1e6, 0)} × 10⁻⁶`;

function MadeOf({ recipe }: { readonly recipe: StrungString['recipe'] }) {
  return (
    <>
      {recipe.coreWireId}
      {recipe.wrapWireIds.length > 0 && (
        <>
          <br />
          <span className="quiet">wrapped with {recipe.wrapWireIds.join(', over it ')}</span>
        </>
      )}
    </>
  );
}
