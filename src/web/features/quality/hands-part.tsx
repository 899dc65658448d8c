import { useId } from 'react';
import type { QualityView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';

/** What hands have to do with it when everything else is out of the figures. No person is named, and none is ranked. */
export function HandsPart({ hands }: { readonly hands: QualityView['hands'] }) {
  const words = useWords(QUALITY_WORDS).hands;
  const figures = useFigures();
  const id = useId();
  const told = (known: QualityView['hands']): string => {
    if (!known) return words.unknown;
    return known.p < PROVEN
      ? words.some(known.winders, figures.share(known.share))
      : words.none(known.winders);
  };
  return (
    <section aria-labelledby={id} className={desk.part}>
      <h2 id={id}>{words.title}</h2>
      <p>{told(hands)}</p>
      <p className="quiet small">{words.method}</p>
    </section>
  );
}

const PROVEN = 0.01;
