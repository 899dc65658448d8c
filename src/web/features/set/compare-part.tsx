import { formatFraction } from '../../../core/units/index.js';
import desk from '../../parts/desk.module.css';
import { PullBar } from '../../parts/pull-bar.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import styles from './set-part.module.css';
import type { StrungSet, StrungString } from './strung-set.js';
import { UnmadeWords } from './unmade-words.js';
import type { Strung } from './use-strung-set.js';

interface ComparePartProps {
  readonly name: string;
  readonly strung: StrungSet;
  readonly other: string;
  readonly otherStrung: Strung;
}

/** Two sets side by side in the same place: gauge and pull of each string, and what they do together. */
export function ComparePart({ name, strung, other, otherStrung }: ComparePartProps) {
  const { compare: words } = useWords(SETS_WORDS);
  return (
    <section aria-labelledby="compare" className={desk.part}>
      <h2 id="compare">{words.title(name, other)}</h2>
      {otherStrung.ok ? (
        <SideBySide names={[name, other]} here={strung} there={otherStrung.value} />
      ) : 'spec' in otherStrung.fault ? (
        <UnmadeWords unmade={otherStrung.fault} />
      ) : (
        <p className="care">{words.notHere}</p>
      )}
    </section>
  );
}

interface Beside {
  readonly position: number;
  readonly here: StrungString;
  readonly there: StrungString;
}

interface SideBySideProps {
  readonly names: readonly [string, string];
  readonly here: StrungSet;
  readonly there: StrungSet;
}

function SideBySide({ names: [name, other], here, there }: SideBySideProps) {
  const words = useWords(SETS_WORDS);
  const { pull } = useFigures();
  const rows = here.strings.flatMap((string, at): Beside[] => {
    const beside = there.strings[at];
    return beside ? [{ position: string.position, here: string, there: beside }] : [];
  });
  const largestN = Math.max(...rows.flatMap((row) => [pullOf(row.here), pullOf(row.there)]));
  const barOf = (string: StrungString, beside: StrungString) => (
    <div className={styles.beside}>
      <PullBar nowN={pullOf(string)} wishedN={pullOf(beside)} largestN={largestN} />
      {pull(pullOf(string))}
    </div>
  );
  return (
    <>
      <p className="quiet">{words.compare.lead}</p>
      <SheetTable
        caption={words.compare.title(name, other)}
        columns={[
          { heading: words.compare.position, names: true, cell: ({ position }) => position },
          { heading: `${name}: ${words.compare.gauge}`, cell: (row) => gaugeInWords(row.here.spec) },
          { heading: `${name}: ${words.compare.pull}`, cell: (row) => barOf(row.here, row.there) },
          { heading: `${other}: ${words.compare.gauge}`, cell: (row) => gaugeInWords(row.there.spec) },
          { heading: `${other}: ${words.compare.pull}`, cell: (row) => barOf(row.there, row.here) },
          {
            heading: words.compare.difference,
            figures: true,
            cell: (row) => changeInWords(pullOf(row.there) / pullOf(row.here) - 1, words.compare.same),
          },
        ]}
        middle
        rows={rows}
        rowKey={({ position }) => position}
        foot={
          <tr>
            <th scope="row">{words.compare.total}</th>
            <td />
            <td>{pull(here.load.totalN)}</td>
            <td />
            <td>{pull(there.load.totalN)}</td>
            <td>
              <div className={styles.figures}>
                {changeInWords(there.load.totalN / here.load.totalN - 1, words.compare.same)}
              </div>
            </td>
          </tr>
        }
      />
    </>
  );
}

const pullOf = ({ figures }: StrungString): number => figures.tensionN.value;

function changeInWords(share: number, same: string): string {
  const words = formatFraction(Math.abs(share), 1);
  if (words === formatFraction(0, 1)) return same;
  return `${share > 0 ? '+' : '−'}${words}`;
}
