import { useId } from 'react';
import type { QualityView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { MeasureBar } from '../../parts/measure-bar.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import styles from './quality.module.css';

type Row = QualityView['scrap'][number];

/** Why strings are thrown away, the commonest reason first. */
export function ScrapPart({ view }: { readonly view: QualityView }) {
  const words = useWords(QUALITY_WORDS).scrap;
  const figures = useFigures();
  const id = useId();
  const most = view.scrap[0] ? view.scrap[0].winder + view.scrap[0].coiler : 0;
  const columns: readonly SheetColumn<Row>[] = [
    { heading: words.columns.reason, names: true, cell: ({ reason }) => reason ?? words.untold },
    { heading: words.columns.winder, figures: true, cell: ({ winder }) => figures.number(winder) },
    { heading: words.columns.coiler, figures: true, cell: ({ coiler }) => figures.number(coiler) },
    {
      heading: words.columns.together,
      wide: true,
      cell: ({ winder, coiler }) => (
        <div className={styles.bar}>
          <MeasureBar value={winder + coiler} full={most} />
        </div>
      ),
    },
    { heading: words.columns.cumulative, figures: true, cell: ({ cumulative }) => figures.share(cumulative) },
  ];
  return (
    <section aria-labelledby={id} className={desk.part}>
      <h2 id={id}>{words.title}</h2>
      {view.scrap.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <SheetTable
          caption={words.title}
          columns={columns}
          rows={view.scrap}
          rowKey={({ reason = '' }) => reason}
          middle
        />
      )}
    </section>
  );
}
