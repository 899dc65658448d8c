import { type Construction, type SeatModel, stringBody } from '../../../core/string/index.js';
import { SectionAcross } from '../../parts/section/section-across.js';
import { SectionAlong } from '../../parts/section/section-along.js';
import { sectionOf } from '../../parts/section/section-of.js';
import { sectionInWords } from '../../parts/section/section-words.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import styles from './section-figure.module.css';

interface SectionFigureProps {
  readonly construction: Construction;
  readonly seat: SeatModel | undefined;
}

/** The string cut across and along, to scale, with the same in words. */
export function SectionFigure({ construction, seat }: SectionFigureProps) {
  const words = useWords(RECIPES_WORDS);
  const made = stringBody(construction, seat);
  if (!made.ok) return null;
  const section = sectionOf({ construction }, made.value);
  const scale = HEIGHT / section.outsideM;
  return (
    <figure className={styles.figure}>
      <div className={styles.drawings}>
        <SectionAcross section={section} scale={scale} />
        <SectionAlong section={section} scale={scale} width={WIDTH} />
      </div>
      <figcaption className="quiet small">
        {words.drawnScale(Math.round(scale / PIXELS_PER_M))} {sectionInWords(section)}
      </figcaption>
    </figure>
  );
}

const HEIGHT = 120;
const WIDTH = 190;
/** A pixel of a page is 1/96 inch (CSS Values and Units). */
const PIXELS_PER_M = 96 / 0.0254;
