import { materialInWords } from '../../../contract/index.js';
import type { Estimate } from '../../../core/numeric/index.js';
import { formatDecimal, formatFraction, pitchName } from '../../../core/units/index.js';
import { Explained, type Explanation } from '../../parts/explained.js';
import { SectionAcross } from '../../parts/section/section-across.js';
import { sectionOf } from '../../parts/section/section-of.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import {
  explainBend,
  explainInharmonicity,
  explainPull,
  explainStress,
  explainWeight,
} from './explain-string.js';
import styles from './set-part.module.css';
import type { StrungString } from './strung-set.js';

/** Every string cut across, all to one scale, with its figures and how sure they are. */
export function FiguresTable({ strings }: { readonly strings: readonly StrungString[] }) {
  const figures = useFigures();
  const words = useWords(SETS_WORDS);
  const scale = SECTION_SIZE / Math.max(...strings.map(({ body }) => body.meanDiameterM));
  return (
    <>
      <SheetTable
        caption={words.figures.title}
        columns={[...whatItIs(words.figures, scale), ...whatItDoes(words, figures)]}
        middle
        rows={strings}
        rowKey={({ position }) => position}
      />
      <p className={styles.caption}>{words.figures.caption}</p>
    </>
  );
}

const SECTION_SIZE = 64;

type Words = (typeof SETS_WORDS)['en'];

const whatItIs = (words: Words['figures'], scale: number): readonly SheetColumn<StrungString>[] => [
  { heading: words.string, names: true, cell: ({ position, pitch }) => `${position} ${pitchName(pitch)}` },
  {
    heading: words.cut,
    cell: ({ recipe, body }) => (
      <div className={styles.cut}>
        <SectionAcross section={sectionOf(recipe, body)} scale={scale} />
      </div>
    ),
  },
  {
    heading: words.gauge,
    cell: ({ spec }) => (
      <>
        <strong className={styles.gauge}>{gaugeInWords(spec)}</strong>
        <br />
        <span className="quiet">{materialInWords(spec.material)}</span>
      </>
    ),
  },
  {
    heading: words.made,
    wide: true,
    cell: ({ recipe }) => (
      <>
        {recipe.coreWireId}
        {recipe.wrapWireIds.length > 0 && (
          <>
            <br />
            <span className="quiet">{words.wrapped(recipe.wrapWireIds)}</span>
          </>
        )}
      </>
    ),
  },
];

function whatItDoes({ figures: words, how }: Words, figures: Figures): readonly SheetColumn<StrungString>[] {
  const teller = { words: how, figures };
  const told =
    (
      name: (string: string) => string,
      explain: (string: StrungString) => Explanation,
      value: (string: StrungString) => string,
    ) =>
    (string: StrungString) => (
      <Explained name={name(how.string(string.position))} how={() => explain(string)}>
        {value(string)}
      </Explained>
    );
  const pull = told(
    how.pullOf,
    (string) => explainPull(toldOf(string), teller),
    (string) => figures.pull(string.figures.tensionN.value),
  );
  const stress = told(
    how.stressOf,
    (string) =>
      explainStress(
        { tensionN: string.figures.tensionN.value, breakingLoadN: string.body.breakingLoadN },
        teller,
      ),
    (string) => formatFraction(string.figures.stressShare?.value ?? 0),
  );
  const weight = told(
    how.weightOf,
    (string) => explainWeight(string.recipe, teller),
    (string) => figures.unitWeight(string.figures.linearDensityKgPerM.value),
  );
  const stiffness = told(
    how.stiffnessOf,
    (string) => explainInharmonicity(string.recipe, teller),
    (string) => words.millionths(formatDecimal(string.figures.inharmonicityB.value * 1e6, 0)),
  );
  const bend = told(
    how.bendOf,
    (string) => explainBend(string.recipe, teller),
    (string) => figures.pull(string.figures.bend?.forceN.value ?? 0),
  );
  const within = (band: string) => (
    <>
      <br />
      <span className="quiet">{words.within(band)}</span>
    </>
  );
  return [
    {
      heading: words.pull,
      figures: true,
      cell: (string) => (
        <>
          {pull(string)}
          {within(figures.pull(twice(string.figures.tensionN)))}
        </>
      ),
    },
    {
      heading: words.stress,
      figures: true,
      cell: (string) => (string.figures.stressShare === undefined ? words.strengthUnknown : stress(string)),
    },
    {
      heading: words.weight,
      figures: true,
      cell: (string) => (
        <>
          {weight(string)}
          {within(formatFraction(relative(string.figures.linearDensityKgPerM), 1))}
        </>
      ),
    },
    { heading: words.inharmonicity, figures: true, cell: stiffness },
    {
      heading: words.bend,
      figures: true,
      cell: (string) => (string.figures.bend ? bend(string) : words.outOfReach),
    },
    {
      heading: words.shelf,
      figures: true,
      cell: ({ onShelf }) => (onShelf === 0 ? words.none : figures.number(onShelf)),
    },
  ];
}

const toldOf = ({ figures, speakingLengthM, frequencyHz, recipe }: StrungString) => ({
  linearDensityKgPerM: figures.linearDensityKgPerM.value,
  speakingLengthM,
  frequencyHz,
  state: recipe.state,
});

/** Twice the standard uncertainty covers about 95 % (GUM, JCGM 100:2008, 6.3.3). */
const twice = ({ u }: Estimate): number => 2 * u;

const relative = (figure: Estimate): number => twice(figure) / figure.value;
