import { Link } from '@tanstack/react-router';
import type { Day, WirePull } from '../../../core/day/index.js';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';

type PlanWords = (typeof PLAN_WORDS)['en'];

/** Wire to carry to the machines this day, from which spool, by weight. */
export function WirePart({ day }: { readonly day: Day }) {
  const words = useWords(PLAN_WORDS);
  const figures = useFigures();
  const short = day.wirePulls.filter(({ shortKg }) => shortKg > 0).length;
  return (
    <section aria-labelledby="wire">
      <h2 id="wire">{words.wire}</h2>
      <p className={short > 0 ? 'care' : 'quiet'}>{words.wires(day.wirePulls.length, short)}</p>
      {day.wirePulls.length > 0 && (
        <SheetTable
          caption={words.wire}
          columns={columnsOf(day.date, words, figures)}
          rows={day.wirePulls}
          rowKey={({ wireId }) => wireId}
        />
      )}
    </section>
  );
}

const columnsOf = (
  date: string,
  words: PlanWords,
  { weight, number, unitWeight }: Figures,
): readonly SheetColumn<WirePull>[] => [
  { heading: words.wireColumns.wire, names: true, cell: ({ wireId }) => wireId },
  {
    heading: words.wireColumns.take,
    figures: true,
    cell: ({ wireId, neededKg }) => (
      <Explained
        name={words.takeName(wireId)}
        what={words.takeWhat}
        formula={words.takeFormula}
        inputs={[{ name: words.takeStrings, value: weight(neededKg) }]}
        source={words.takeSource}
      >
        {weight(neededKg)}
      </Explained>
    ),
  },
  {
    heading: words.wireColumns.metres,
    figures: true,
    cell: ({ wireId, neededKg, neededM }) => (
      <Explained
        name={words.metresName(wireId)}
        what={words.metresWhat}
        formula={words.metresFormula}
        inputs={[
          { name: words.wireColumns.take, value: weight(neededKg) },
          { name: words.unitWeightIs, value: unitWeight(neededKg / neededM) },
        ]}
        source={words.metresSource}
      >
        {words.metres(number(Math.ceil(neededM)))}
      </Explained>
    ),
  },
  { heading: words.wireColumns.from, wide: true, cell: (pull) => <Spools pull={pull} /> },
  {
    heading: words.wireColumns.short,
    figures: true,
    cell: ({ shortKg }) => (shortKg > 0 ? <span className="care">{words.short(weight(shortKg))}</span> : '—'),
  },
  { heading: words.wireColumns.lots, wide: true, cell: (pull) => <Lots pull={pull} date={date} /> },
];

function Spools({ pull }: { readonly pull: WirePull }) {
  const words = useWords(PLAN_WORDS);
  const { weight } = useFigures();
  if (pull.spools.length === 0) return words.noSpool;
  return pull.spools.map(({ spoolId, lot, takeKg, leavesKg }) => (
    <div key={spoolId}>
      {words.fromSpool(spoolId, lot, weight(takeKg))}{' '}
      <span className="quiet">{leavesKg > 0 ? words.leaves(weight(leavesKg)) : words.empties}</span>
    </div>
  ));
}

function Lots({ pull, date }: { readonly pull: WirePull; readonly date: string }) {
  return [...new Set(pull.runs)].map((lotId, at) => (
    <span key={lotId}>
      {at > 0 && ', '}
      <Link to="/plan/$lotId" params={{ lotId }} search={{ date }} preload={false}>
        {lotId}
      </Link>
    </span>
  ));
}
