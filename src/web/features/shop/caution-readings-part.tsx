import { cautionInWords, type ReadingAnswer } from '../../../contract/index.js';
import { useReadingPages } from '../../api/use-reading-pages.js';
import { useWho } from '../../api/use-who.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';

type Reading = ReadingAnswer<'caution-readings'>['items'][number];

/** Who said that they had read which cautions at a machine, newest first. */
export function CautionReadingsPart({ machineId }: { readonly machineId: string }) {
  const { cautions: words } = useWords(SHOP_WORDS);
  const pages = useReadingPages('caution-readings', { machineId });
  return (
    <section className={desk.part} aria-labelledby="cautions-read">
      <h2 id="cautions-read">{words.title}</h2>
      <p className={desk.lead}>{words.lead}</p>
      <Asked question={pages} what={words.what}>
        {(data) => <Readings rows={data.pages.flatMap(({ items }) => items)} />}
      </Asked>
      {pages.hasNextPage && <Button onClick={() => void pages.fetchNextPage()}>{words.more}</Button>}
    </section>
  );
}

function Readings({ rows }: { readonly rows: readonly Reading[] }) {
  const { cautions: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  if (rows.length === 0) return <p className="quiet">{words.none}</p>;
  return (
    <SheetTable
      caption={words.title}
      columns={[
        {
          heading: words.columns.who,
          names: true,
          cell: ({ personId }) => whoOf(`person/${personId}`),
        },
        { heading: words.columns.at, cell: ({ at }) => figures.moment(at) },
        {
          heading: words.columns.which,
          whole: true,
          cell: ({ cautions }) => cautions.map((caution) => cautionInWords(caution).title).join(', '),
        },
      ]}
      rows={rows}
      rowKey={({ id }) => id}
    />
  );
}
