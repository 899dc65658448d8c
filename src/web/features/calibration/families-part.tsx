import { useState } from 'react';
import type { CalibrationView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import { taughtOf } from './taught.js';
import { useCalibrationNames } from './use-calibration-names.js';

type Family = CalibrationView['families'][number];
type Unknown = Family['unknowns'][number];

/** Families of strings: how well each is known, and what was learned of one that is opened. */
export function FamiliesPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const names = useCalibrationNames(view);
  const [openKey, setOpenKey] = useState<string>();
  const opened = view.families.find(({ key }) => key === openKey) ?? view.families[0];
  const said = words.families;
  const columns: readonly SheetColumn<Family>[] = [
    {
      heading: said.columns.family,
      names: true,
      cell: ({ key, family }) => (
        <button
          type="button"
          className={desk.linked}
          aria-current={key === opened?.key}
          onClick={() => setOpenKey(key)}
        >
          {names.family(family)}
        </button>
      ),
    },
    { heading: said.columns.strings, figures: true, cell: ({ strings }) => figures.number(strings) },
    { heading: said.columns.runs, figures: true, cell: ({ runs }) => figures.number(runs) },
    {
      heading: said.columns.within,
      figures: true,
      cell: ({ widestM, family }) => (
        <Explained name={said.withinName(names.family(family))} {...said.withinHow}>
          ± {figures.slight(widestM)}
        </Explained>
      ),
    },
    {
      heading: said.columns.state,
      cell: ({ isCalibrated }) => (
        <StateMark tone={isCalibrated ? 'done' : 'goes'}>
          {isCalibrated ? said.calibrated : said.predicted}
        </StateMark>
      ),
    },
  ];
  return (
    <section className={desk.part} aria-labelledby="families">
      <h2 id="families">{said.title}</h2>
      <p className={desk.lead}>
        {said.lead(
          view.rule.familyStrings,
          view.rule.familyRuns,
          figures.slight(view.rule.shareOfTolerance * view.rule.toleranceM),
        )}
      </p>
      <SheetTable
        caption={said.title}
        columns={columns}
        rows={view.families}
        rowKey={({ key }) => key}
        middle
      />
      {opened && (
        <FamilyLearned
          name={names.family(opened.family)}
          family={opened}
          machineName={names.machine}
          key={opened.key}
        />
      )}
    </section>
  );
}

interface FamilyLearnedProps {
  readonly name: string;
  readonly family: Family;
  readonly machineName: (id: string) => string;
}

function FamilyLearned({ name, family, machineName }: FamilyLearnedProps) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const said = words.families;
  const interval = ({ value, u }: Unknown['now']): string =>
    `${figures.number(value, 4)} ± ${figures.number(NINETY * u, 4)}`;
  const columns: readonly SheetColumn<Unknown>[] = [
    {
      heading: said.learnedColumns.figure,
      names: true,
      cell: (unknown) => words.unknowns[unknown.name].name,
    },
    { heading: said.learnedColumns.before, figures: true, cell: ({ before }) => interval(before) },
    {
      heading: said.learnedColumns.now,
      figures: true,
      cell: ({ name: which, now, before }) => (
        <Explained
          name={words.unknowns[which].name}
          what={words.unknowns[which].what}
          formula={words.unknowns[which].formula}
          inputs={[
            { name: said.inputs.before, value: interval(before) },
            { name: said.inputs.strings, value: figures.number(family.strings) },
            { name: said.inputs.runs, value: figures.number(family.runs) },
          ]}
          source={said.source}
        >
          {interval(now)}
        </Explained>
      ),
    },
    {
      heading: said.learnedColumns.inWords,
      wide: true,
      cell: (unknown) => inWords(unknown, words, figures.number),
    },
  ];
  const byMachine = family.machines.filter(({ strings }) => strings > 0);
  return (
    <div className={desk.stack}>
      <h3>{said.learned(name)}</h3>
      <SheetTable
        caption={said.learned(name)}
        columns={columns}
        rows={family.unknowns}
        rowKey={(unknown) => unknown.name}
      />
      {byMachine.length > 0 && (
        <SheetTable
          caption={said.byMachine(name)}
          columns={[
            {
              heading: said.machineColumns.machine,
              names: true,
              cell: ({ machineId }) => machineName(machineId),
            },
            {
              heading: said.machineColumns.strings,
              figures: true,
              cell: ({ strings }) => figures.number(strings),
            },
            ...(['massSeat', 'flattening', 'extraGap'] as const).map(
              (which): SheetColumn<Family['machines'][number]> => ({
                heading: words.unknowns[which].name,
                figures: true,
                cell: ({ unknowns }) => {
                  const found = unknowns.find((unknown) => unknown.name === which);
                  return found ? interval(found.now) : '';
                },
              }),
            ),
          ]}
          rows={byMachine}
          rowKey={({ machineId }) => machineId}
        />
      )}
    </div>
  );
}

const NINETY = 1.6449;

function inWords(
  unknown: Unknown,
  words: (typeof CALIBRATION_WORDS)['en'],
  number: (value: number, decimals?: number) => string,
): string {
  const { direction, sharper, isLearned } = taughtOf(unknown);
  if (!isLearned) return words.families.nothingLearned;
  return words.families.sentence(words.unknowns[unknown.name][direction], number(sharper, 1));
}
