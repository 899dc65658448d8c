import {
  endInWords,
  lengthInBoth,
  setPointInWords,
  sizeInBoth,
  whirlInWords,
} from '../../../contract/index.js';
import type { Recipe } from '../../../core/recipes/index.js';
import type { StringBody } from '../../../core/string/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { SectionAcross } from '../../parts/section/section-across.js';
import { SectionAlong } from '../../parts/section/section-along.js';
import { sectionOf } from '../../parts/section/section-of.js';
import { sectionInWords } from '../../parts/section/section-words.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import { LeanedOn } from './leaned-on.js';
import styles from './set-up.module.css';

interface CorePartProps {
  readonly sheet: SetUpSheet;
  readonly made: { readonly recipe: Recipe; readonly body: StringBody } | undefined;
}

/** Core or plain wire: which, how long to cut, which end, how tight; and the string drawn to scale. */
export function CorePart({ sheet, made }: CorePartProps) {
  const words = useWords(SET_UP_WORDS);
  const { core } = sheet;
  const size = sizeInBoth(core.sizeM);
  return (
    <section aria-labelledby="core" className={styles.part}>
      <h2 id="core">
        {words.titled(
          sheet.kind === 'cut' ? words.plainWire : words.core,
          core.wireId,
          core.shape === 'hex' ? words.acrossFlats(size) : size,
        )}
      </h2>
      <div className={styles.beside}>
        <dl className={styles.facts}>
          <div>
            <dt>{words.cutTo}</dt>
            <dd className={styles.large}>{lengthInBoth(core.cutLengthM)}</dd>
          </div>
          <div>
            <dt>{words.end}</dt>
            <dd className={styles.large}>{endInWords(core.end)}</dd>
          </div>
          {sheet.coreTension && (
            <div className={styles.across}>
              <dt>{words.coreTension}</dt>
              <dd>
                {setPointInWords(sheet.coreTension)}
                <LeanedOn point={sheet.coreTension} />
              </dd>
            </div>
          )}
          {sheet.whirl && (
            <div className={styles.across}>
              <dt>{words.whirl}</dt>
              <dd>{whirlInWords(sheet.whirl)}</dd>
            </div>
          )}
        </dl>
        {made && <SectionFigure made={made} />}
      </div>
    </section>
  );
}

function SectionFigure({ made: { recipe, body } }: { readonly made: NonNullable<CorePartProps['made']> }) {
  const words = useWords(SET_UP_WORDS);
  const section = sectionOf(recipe, body);
  const scale = SECTION_HEIGHT / section.outsideM;
  return (
    <figure className={styles.section}>
      <div>
        <SectionAcross section={section} scale={scale} />
        <SectionAlong section={section} scale={scale} width={SECTION_WIDTH} />
      </div>
      <figcaption>{words.section(Math.round(scale / PIXELS_PER_M), sectionInWords(section))}</figcaption>
    </figure>
  );
}

const SECTION_HEIGHT = 150;
const SECTION_WIDTH = 210;
/** A pixel of a page is 1/96 inch (CSS Values and Units). */
const PIXELS_PER_M = 96 / 0.0254;
