import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { LongTable } from '../../parts/long-table.js';
import { MeasureBar } from '../../parts/measure-bar.js';
import { PullBar } from '../../parts/pull-bar.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import { Part } from './part.js';

const STRINGS = [
  { position: 1, gaugeM: 0.000254, pullN: 72, wishedN: 70 },
  { position: 2, gaugeM: 0.00033, pullN: 68, wishedN: 70 },
  { position: 3, gaugeM: 0.00043, pullN: 77, wishedN: 70 },
];
const LOTS = Array.from({ length: 100_000 }, (_, at) => at + 1);

/** Figures by themselves, in rows of facts, and in tables short and long. */
export function FiguresPart() {
  const words = useWords(LOOK_WORDS);
  const { pull, diameter, number } = useFigures();
  const { facts, columns, explained } = words;
  return (
    <>
      <Part title={words.figures}>
        <Facts
          facts={[
            {
              name: facts.pull,
              value: (
                <Explained
                  name={explained.name}
                  what={explained.what}
                  formula={explained.formula}
                  inputs={[
                    { name: explained.massName, value: explained.mass },
                    { name: explained.lengthName, value: explained.length },
                  ]}
                  source={explained.source}
                >
                  {pull(83.6)}
                </Explained>
              ),
            },
            { name: facts.strings, value: number(1234), under: words.factUnder },
            { name: facts.cover, value: facts.days(number(3)), under: words.factLow, care: true },
          ]}
        />
        {[20, 80].map((value) => (
          <div key={value}>
            <p>{words.measureBar(value)}</p>
            <MeasureBar value={value} full={100} mark={40} />
          </div>
        ))}
      </Part>
      <Part title={words.tables}>
        <SheetTable
          caption={words.tableCaption}
          rows={STRINGS}
          rowKey={({ position }) => position}
          columns={[
            { heading: columns.position, cell: ({ position }) => position, names: true },
            { heading: columns.gauge, cell: ({ gaugeM }) => diameter(gaugeM), figures: true },
            { heading: columns.pull, cell: ({ pullN }) => pull(pullN), figures: true },
            {
              heading: columns.bar,
              wide: true,
              cell: ({ pullN, wishedN }) => <PullBar nowN={pullN} wishedN={wishedN} largestN={80} />,
            },
          ]}
        />
        <LongTable
          caption={words.longCaption}
          rows={LOTS}
          rowKey={String}
          columns={[
            { heading: columns.lot, cell: words.lot, share: 2 },
            { heading: columns.count, cell: (lot) => number(lot % 97), figures: true },
            { heading: columns.state, cell: () => <StateMark tone="done">{words.released}</StateMark> },
          ]}
        />
      </Part>
    </>
  );
}
