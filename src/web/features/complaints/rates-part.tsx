import { type ComplaintRegister, complaintFaultInWords } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';

type Rate = NonNullable<ComplaintRegister['all']>;
type Words = (typeof COMPLAINTS_WORDS)['en']['rates'];

/** A rate per thousand with its interval: `2.5 (1.1 to 4.9)`. */
export const rateInWords = ({ perThousand, interval }: Rate, words: Words, { number }: Figures): string =>
  words.rateOf(number(perThousand, 1), number(interval.from, 1), number(interval.to, 1));

/** How many of a thousand strings were complained of, fault by fault. */
export function RatesPart({ register }: { readonly register: ComplaintRegister }) {
  const { rates: words } = useWords(COMPLAINTS_WORDS);
  const figures = useFigures();
  const { all, faults, unplaced, fresh, from, to } = register;
  const columns: readonly SheetColumn<ComplaintRegister['faults'][number]>[] = [
    { heading: words.fault, names: true, cell: ({ fault }) => complaintFaultInWords(fault) },
    { heading: words.complaints, figures: true, cell: ({ complaints }) => complaints },
    { heading: words.rate, figures: true, cell: (rate) => rateInWords(rate, words, figures) },
  ];
  return (
    <section aria-labelledby="rates" className={desk.part}>
      <h2 id="rates">{words.title}</h2>
      <p className="quiet">{words.lead(figures.date(from), figures.date(to))}</p>
      {all ? (
        <>
          <p>
            {words.all}:{' '}
            <strong>
              <Explained name={words.how} what={words.what} formula={words.formula} source={words.source}>
                {rateInWords(all, words, figures)}
              </Explained>
            </strong>
            , {words.ofStrings(all.complaints, figures.number(all.strings))}.
          </p>
          {faults.length > 0 && (
            <SheetTable caption={words.title} columns={columns} rows={faults} rowKey={({ fault }) => fault} />
          )}
        </>
      ) : (
        <p>{words.noStrings}</p>
      )}
      {unplaced > 0 && <p className="quiet small">{words.unplaced(unplaced)}</p>}
      {fresh.strings > 0 && (
        <p className="quiet small">{words.fresh(figures.number(fresh.strings), fresh.days)}</p>
      )}
    </section>
  );
}
