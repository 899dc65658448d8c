import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import type { ComplaintRegister } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { rateInWords } from './rates-part.js';
import { standingOut } from './standing-out.js';

type Rate = ComplaintRegister['tables'][number]['rates'][number];

/** Of more sources than this those without a complaint are counted alone. */
const MOST_SHOWN = 24;

/** Whether complaints fall on some machine, wire lot, gauge or month more than the strings did. */
export function SourcesPart({ register }: { readonly register: ComplaintRegister }) {
  const { sources: words, rates: rateWords } = useWords(COMPLAINTS_WORDS);
  const figures = useFigures();
  const [chosen, setChosen] = useState<string>();
  const { tables, crowd } = register;
  const table = tables.find(({ by }) => by === chosen) ?? tables[0];
  const found = standingOut(tables);
  const chance = (p: number) => (p < 0.001 ? words.under : words.percent(figures.number(p * 100, 1)));
  const columns: readonly SheetColumn<Rate>[] = [
    {
      heading: words.source,
      names: true,
      cell: (rate) => (
        <>
          {rate.name}{' '}
          {found.some((each) => each.rate === rate) && <StateMark tone="care">{words.stands}</StateMark>}
        </>
      ),
    },
    { heading: rateWords.complaints, figures: true, cell: ({ complaints }) => complaints },
    { heading: rateWords.strings, figures: true, cell: ({ strings }) => figures.number(strings) },
    { heading: rateWords.rate, figures: true, cell: (rate) => rateInWords(rate, rateWords, figures) },
    {
      heading: words.times,
      figures: true,
      cell: ({ times }) => times !== undefined && words.timesOf(figures.number(times, 1)),
    },
    { heading: words.chance, figures: true, cell: ({ p }) => p !== undefined && chance(p) },
  ];
  if (!table) return null;
  const shown =
    table.rates.length > MOST_SHOWN ? table.rates.filter(({ complaints }) => complaints > 0) : table.rates;
  return (
    <section aria-labelledby="sources" className={desk.part}>
      <h2 id="sources">{words.title}</h2>
      <p className="quiet">{words.lead}</p>
      {found.length === 0 ? (
        <p>{tables.some(({ p }) => p !== undefined) ? words.none : words.few}</p>
      ) : (
        <>
          <ul className={desk.list}>
            {found.map(({ by, rate }) => (
              <li key={`${by} ${rate.name}`} className="care">
                {words.found(words.by(by), rate.name, rate.complaints, figures.number(rate.times ?? 0, 1))}
              </li>
            ))}
          </ul>
          <p className="quiet small">{words.caution}</p>
        </>
      )}
      <div className={desk.narrow}>
        <NativeSelect
          label={words.sort}
          value={table.by}
          data={tables.map(({ by }) => ({ value: by, label: words.by(by) }))}
          onChange={(event) => setChosen(event.currentTarget.value)}
        />
        <p role="status" className={desk.loose}>
          {table.p === undefined ? (
            words.few
          ) : (
            <Explained name={words.how} what={words.what} source={words.howSource}>
              {table.p <= 0.05 ? words.uneven(chance(table.p)) : words.even}
            </Explained>
          )}
        </p>
      </div>
      <SheetTable caption={words.by(table.by)} columns={columns} rows={shown} rowKey={({ name }) => name} />
      {shown.length < table.rates.length && (
        <p className="quiet small">{words.others(table.rates.length - shown.length)}</p>
      )}
      {crowd && (
        <p className="quiet small">
          {words.crowd(crowd.count, crowd.days, figures.date(crowd.from), chance(crowd.p))}{' '}
          {words.crowdSource}
        </p>
      )}
    </section>
  );
}
