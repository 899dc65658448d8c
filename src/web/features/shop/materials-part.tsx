import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import {
  ALLOYS,
  type Alloy,
  SOURCES,
  type SourcedFigure,
  type SourceKey,
  STRENGTH_TABLES,
  type StrengthRow,
  type StrengthTableId,
} from '../../../core/materials/index.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';

/** Alloys and standards of strength, with where each figure was read. */
export function MaterialsPart() {
  const { materials: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  return (
    <>
      <section className={desk.part} aria-labelledby="alloys">
        <h2 id="alloys">{words.alloys}</h2>
        <SheetTable
          caption={words.alloys}
          columns={alloyColumns(words, figures)}
          rows={Object.values(ALLOYS)}
          rowKey={({ id }) => id}
        />
      </section>
      <StrengthTables />
    </>
  );
}

type Words = (typeof SHOP_WORDS)['en']['materials'];

const alloyColumns = (words: Words, figures: Figures): readonly SheetColumn<Alloy>[] => [
  {
    heading: words.columns.alloy,
    names: true,
    cell: ({ name }) => name,
  },
  {
    heading: words.columns.density,
    figures: true,
    cell: (alloy) => (
      <SourcedWords
        alloy={alloy}
        figure={alloy.densityKgPerM3}
        name={words.figureNames.density}
        inFigures={(value) => `${figures.number(value)} kg/m³`}
      />
    ),
  },
  {
    heading: words.columns.modulus,
    figures: true,
    cell: (alloy) => (
      <SourcedWords
        alloy={alloy}
        figure={alloy.youngsModulusPa}
        name={words.figureNames.modulus}
        inFigures={(value) => `${figures.number(value / 1e9, 1)} GPa`}
      />
    ),
  },
  {
    heading: words.columns.expansion,
    figures: true,
    cell: (alloy) => (
      <SourcedWords
        alloy={alloy}
        figure={alloy.expansionPerK}
        name={words.figureNames.expansion}
        inFigures={(value) => `${figures.number(value * 1e6, 1)} · 10⁻⁶`}
      />
    ),
  },
  {
    heading: words.columns.nickel,
    cell: ({ containsNickel }) => (containsNickel ? words.yes : words.no),
  },
  { heading: words.columns.magnetic, cell: ({ magnetic }) => (magnetic ? words.yes : words.no) },
];

interface SourcedWordsProps {
  readonly alloy: Alloy;
  readonly figure: SourcedFigure;
  readonly name: string;
  readonly inFigures: (value: number) => string;
}

/** A figure of a material with its pedigree. */
function SourcedWords({ alloy, figure, name, inFigures }: SourcedWordsProps) {
  const { materials: words } = useWords(SHOP_WORDS);
  return (
    <Explained
      name={`${name}, ${alloy.name}`}
      what={[words.figureWhat(name, alloy.name), figure.note].filter(Boolean).join(' ')}
      inputs={[
        ...(figure.u === undefined ? [] : [{ name: words.doubt, value: inFigures(figure.u) }]),
        ...figure.sources.map((key) => ({ name: key, value: sourceInWords(key, words) })),
      ]}
      source={words.standings[figure.standing] ?? ''}
    >
      {inFigures(figure.value)}
    </Explained>
  );
}

function sourceInWords(key: SourceKey, words: Words): string {
  const { by, title, year }: { by: string; title: string; year?: number } = SOURCES[key];
  return words.source(by, year === undefined ? '' : String(year), title);
}

function StrengthTables() {
  const { materials: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const [id, setId] = useState<StrengthTableId>('astm-a228');
  const table = STRENGTH_TABLES[id];
  const { strengthColumns: heads } = words;
  const columns: readonly LongColumn<StrengthRow>[] = [
    { heading: heads.diameter, figures: true, cell: ({ diameterM }) => figures.diameter(diameterM) },
    { heading: heads.minimum, figures: true, cell: ({ minimumPa }) => figures.stress(minimumPa) },
    { heading: heads.maximum, figures: true, cell: ({ maximumPa }) => figures.stress(maximumPa) },
    { heading: heads.note, share: 2, cell: ({ correctedMaximum }) => correctedMaximum && words.corrected },
  ];
  return (
    <section className={desk.part} aria-labelledby="strength">
      <h2 id="strength">{words.strength}</h2>
      <p className="quiet">{words.strengthLead}</p>
      <div className={desk.narrow}>
        <NativeSelect
          label={words.standard}
          value={id}
          data={Object.entries(STRENGTH_TABLES).map(([value, { designation }]) => ({
            value,
            label: designation,
          }))}
          onChange={(event) => setId(event.currentTarget.value as StrengthTableId)}
        />
      </div>
      <p>{words.between[table.betweenRows]}</p>
      <LongTable
        caption={table.designation}
        columns={columns}
        rows={table.rows}
        rowKey={({ diameterM }) => String(diameterM)}
      />
      <h3>{words.sourcesOf}</h3>
      <ul className={desk.list}>
        {table.sources.map((key) => {
          const { read, note }: { read: string; note?: string } = SOURCES[key];
          return (
            <li key={key}>
              {sourceInWords(key, words)}. {words.read}: {read}. {note}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
