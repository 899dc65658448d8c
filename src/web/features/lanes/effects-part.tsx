import { clockInWords } from '../../../contract/index.js';
import type { ArrangementEffects, BeforeAndAfter, Day, MovedRun } from '../../../core/day/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './hand-panel.module.css';
import { useLearnedInputs } from './learned-inputs.js';
import type { PlanWords } from './run-words.js';

interface EffectsPartProps {
  readonly effects: ArrangementEffects;
  readonly day: Day;
}

/** What a move changes in figures, and which runs then begin at another time. */
export function EffectsPart({ effects, day }: EffectsPartProps) {
  const words = useWords(PLAN_WORDS);
  const figures = useFigures();
  const learned = useLearnedInputs(new Set(day.plan.runs.map(({ machineId }) => machineId)));
  return (
    <div className={styles.effects}>
      <SheetTable
        caption={words.effects}
        columns={effectColumns(words)}
        rows={effectRows(effects, { day, learned, words, figures })}
        rowKey={({ name }) => name}
      />
      {effects.moved.length > 0 && (
        <details>
          <summary>{words.movedRuns}</summary>
          <SheetTable
            caption={words.movedRuns}
            columns={movedColumns(day, words)}
            rows={effects.moved}
            rowKey={({ lotId }) => lotId}
          />
        </details>
      )}
    </div>
  );
}

interface EffectRow {
  readonly name: string;
  readonly what: string;
  readonly formula: string;
  readonly figures: BeforeAndAfter;
  readonly show: (value: number) => string;
  /** Set-ups of the shop's own that the figure is learned from. */
  readonly learned: Learned['scrap'];
}

type Learned = ReturnType<typeof useLearnedInputs>;

interface Telling {
  readonly day: Day;
  readonly learned: Learned;
  readonly words: PlanWords;
  readonly figures: Figures;
}

function effectRows(
  { setUpMinutes, scrapStrings, changeCostMinor }: ArrangementEffects,
  { day: { shop }, learned, words, figures: { number } }: Telling,
): readonly EffectRow[] {
  const { effectWhat, effectFormula } = words;
  return [
    {
      name: words.setUpMinutes,
      what: effectWhat.setUp,
      formula: effectFormula.setUp,
      figures: setUpMinutes,
      show: (value) => words.minutes(number(value)),
      learned: learned.minutes,
    },
    {
      name: words.scrapStrings,
      what: effectWhat.scrap,
      formula: effectFormula.scrap,
      figures: scrapStrings,
      show: (value) => number(value, 1),
      learned: learned.scrap,
    },
    {
      name: words.changeCost,
      what: effectWhat.cost,
      formula: effectFormula.cost,
      figures: changeCostMinor,
      show: (value) => formatMoney(Math.round(value), shop),
      learned: [...learned.minutes, ...learned.scrap],
    },
  ];
}

function effectColumns(words: PlanWords): readonly SheetColumn<EffectRow>[] {
  return [
    {
      heading: words.effect,
      names: true,
      cell: ({ name, what, formula, learned }) => (
        <Explained
          name={name}
          what={what}
          formula={formula}
          inputs={learned}
          source={learned.length > 0 ? words.effectLearned : words.effectSource}
        >
          {name}
        </Explained>
      ),
    },
    { heading: words.before, figures: true, cell: ({ figures, show }) => show(figures.before) },
    { heading: words.after, figures: true, cell: ({ figures, show }) => show(figures.after) },
    {
      heading: words.difference,
      figures: true,
      cell: ({ figures: { before, after }, show }) =>
        show(after) === show(before)
          ? words.same
          : `${after > before ? '+' : '−'}${show(Math.abs(after - before))}`,
    },
  ];
}

const movedColumns = ({ date }: Day, words: PlanWords): readonly SheetColumn<MovedRun>[] => [
  { heading: words.columns.lot, names: true, cell: ({ lotId }) => lotId },
  {
    heading: words.was,
    cell: ({ from }) => words.onAt(from.machineId, clockInWords(from.setUpFrom, date)),
  },
  { heading: words.willBe, cell: ({ to }) => words.onAt(to.machineId, clockInWords(to.setUpFrom, date)) },
];
