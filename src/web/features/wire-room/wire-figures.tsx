import { ALLOYS } from '../../../core/materials/index.js';
import { Explained } from '../../parts/explained.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { isShort, unitWeightOf, type WireLine, type WireRecord } from './wire-book.js';

/** How long a wire lasts, and how that is known. */
export function CoverFigure({ line }: { readonly line: WireLine }) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const { cover, wire } = line;
  if (!cover) return null;
  const { onHandKg, usedKg, overDays, coverDays, wantedDays, basis } = cover;
  const inDays = (days: number) => words.days(figures.number(days));
  return (
    <Explained
      name={words.coverName(wire.body.name)}
      what={words.coverWhat}
      formula={words.coverFormula}
      inputs={[
        { name: words.coverInputs.onHand, value: figures.weight(onHandKg) },
        { name: words.coverInputs.used(overDays), value: figures.weight(usedKg) },
        { name: words.coverInputs.wanted, value: inDays(wantedDays) },
      ]}
      source={words.coverSource(basis)}
    >
      {coverDays === undefined ? (
        words.notUsed
      ) : (
        <span className={isShort(line) ? 'care' : undefined}>
          {coverDays > A_YEAR_DAYS ? words.overAYear : inDays(Math.floor(coverDays))}
          {isShort(line) && `, ${words.runsShort}`}
        </span>
      )}
    </Explained>
  );
}

/** Beyond it a figure would be a pretence. */
const A_YEAR_DAYS = 365;

interface LengthFigureProps {
  readonly wire: WireRecord;
  readonly what: string;
  readonly kg: number;
  readonly metres: number;
}

/** A length of wire, and how it follows from the weight. */
export function LengthFigure({ wire, what, kg, metres }: LengthFigureProps) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const { sizeM, alloy } = wire.body;
  return (
    <Explained
      name={words.lengthName(what)}
      what={words.lengthWhat}
      formula={words.lengthFormula}
      inputs={[
        { name: words.lengthInputs.weight, value: figures.weight(kg) },
        { name: words.lengthInputs.size, value: figures.diameter(sizeM) },
        {
          name: words.lengthInputs.density,
          value: `${figures.number(ALLOYS[alloy].densityKgPerM3.value)} kg/m³`,
        },
        { name: words.lengthInputs.unitWeight, value: figures.unitWeight(unitWeightOf(wire)) },
      ]}
      source={words.lengthSource}
    >
      {figures.metres(metres)}
    </Explained>
  );
}
