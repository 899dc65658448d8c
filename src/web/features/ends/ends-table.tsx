import { pullOutcomeInWords } from '../../../contract/index.js';
import { type EndSheet, judgeEndCheck } from '../../../core/winding/index.js';
import { Button } from '../../parts/button.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import type { ShownCheck } from './use-end-checks.js';

interface EndsTableProps<Row> {
  readonly rows: readonly Row[];
  readonly numberOf: (row: Row) => number;
  readonly sheet: EndSheet | undefined;
  readonly onTakeBack?: (number: number, id: string) => void;
  readonly more?: readonly SheetColumn<Row>[];
}

/** What was found of each end, and what the sheet says to it. */
export function EndsTable<Row extends Omit<ShownCheck, 'isComing'>>(props: EndsTableProps<Row>) {
  const { rows, numberOf, sheet, onTakeBack, more = [] } = props;
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const { columns: heads } = words;
  const millimetres = (lengthM: number | undefined, decimals: number) =>
    lengthM === undefined ? words.notLooked : figures.number(lengthM * 1000, decimals);
  const columns: readonly SheetColumn<Row>[] = [
    {
      heading: heads.end,
      names: true,
      cell: (row) =>
        onTakeBack ? (
          <Button onClick={() => onTakeBack(numberOf(row), row.id)}>{words.takeBack(numberOf(row))}</Button>
        ) : (
          words.checking(numberOf(row))
        ),
    },
    {
      heading: `${heads.length}, ${words.mm}`,
      figures: true,
      cell: ({ lengthM }) => millimetres(lengthM, 1),
    },
    {
      heading: heads.twists,
      figures: true,
      cell: ({ twists }) => (twists === undefined ? words.notLooked : figures.number(twists, 1)),
    },
    { heading: `${heads.tail}, ${words.mm}`, figures: true, cell: ({ tailM }) => millimetres(tailM, 1) },
    { heading: heads.seat, cell: ({ seat }) => (seat ? words.seats[seat] : words.notLooked) },
    {
      heading: heads.pull,
      whole: true,
      cell: ({ pull }) =>
        pull ? words.pullWas(figures.pull(pull.forceN), pullOutcomeInWords(pull.came)) : words.notLooked,
    },
    { heading: heads.verdict, whole: true, cell: (row) => <Verdict check={row} sheet={sheet} /> },
    ...more,
  ];
  return <SheetTable caption={words.found} columns={columns} rows={rows} rowKey={({ id }) => id} />;
}

function Verdict({
  check,
  sheet,
}: {
  readonly check: Omit<ShownCheck, 'isComing'>;
  readonly sheet: EndSheet | undefined;
}) {
  const words = useWords(ENDS_WORDS);
  const findings = sheet ? judgeEndCheck(check, sheet) : [];
  const failed = findings.filter(({ verdict }) => verdict === 'failed');
  if (failed.length > 0) {
    const things = failed.map(({ thing }) => words.failedIn[thing]).join(', ');
    return <StateMark tone="stopped">{words.notGood(things)}</StateMark>;
  }
  if (findings.some(({ verdict }) => verdict === 'short'))
    return <StateMark tone="care">{words.verdicts.short}</StateMark>;
  return findings.length > 0 ? (
    <StateMark tone="done">{words.verdicts.good}</StateMark>
  ) : (
    <StateMark tone="waits">{words.verdicts.none}</StateMark>
  );
}
