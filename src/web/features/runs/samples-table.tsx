import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import type { RunSample } from './run-samples.js';

interface SamplesTableProps {
  readonly samples: readonly RunSample[];
  readonly gaugeM: number;
}

/** Every measured string with its readings at place and turn. */
export function SamplesTable({ samples, gaugeM }: SamplesTableProps) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  return (
    <SheetTable
      caption={words.chart}
      columns={columnsOf(words, figures, gaugeM)}
      rows={samples}
      rowKey={({ key }) => key}
    />
  );
}

type RunWords = (typeof RUNS_WORDS)['en'];

const columnsOf = (words: RunWords, figures: Figures, gaugeM: number): readonly SheetColumn<RunSample>[] => {
  const { sampleColumns: heads } = words;
  return [
    { heading: heads.sample, names: true, cell: (sample) => sampleName(sample, words, figures) },
    { heading: heads.at, whole: true, cell: ({ at }) => figures.moment(at) },
    { heading: heads.verdict, cell: ({ trial }) => (trial ? words.verdicts[trial.verdict] : words.none) },
    { heading: heads.mean, figures: true, cell: (sample) => <MeanFigure sample={sample} /> },
    { heading: heads.off, figures: true, cell: ({ meanM }) => signedDiameter(meanM - gaugeM, figures) },
    { heading: heads.spread, figures: true, cell: ({ spreadM }) => figures.diameter(spreadM) },
    {
      heading: heads.readings,
      wide: true,
      cell: ({ readings }) =>
        readings
          .map(({ value, placeM, rotationDeg }) =>
            words.readingAt(
              figures.diameter(value),
              placeM === null ? '' : `@ ${figures.length(placeM)}`,
              rotationDeg === null ? '' : words.turn(figures.number(rotationDeg)),
            ),
          )
          .join('; '),
    },
  ];
};

/** The mean of a string's readings, and from which it was taken. */
export function MeanFigure({ sample }: { readonly sample: RunSample }) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const { readings, meanM } = sample;
  return (
    <Explained
      name={words.meanName(sampleName(sample, words, figures))}
      what={words.meanWhat}
      inputs={[
        {
          name: words.meanInputs.readings,
          value: readings.map(({ value }) => figures.diameter(value)).join(', '),
        },
        {
          name: words.meanInputs.instrument,
          value: [...new Set(readings.map(({ instrument }) => instrument))].join(', '),
        },
      ]}
      source={words.meanSource(readings.length)}
    >
      {figures.diameter(meanM)}
    </Explained>
  );
}

const sampleName = ({ trial, at }: RunSample, words: RunWords, figures: Figures): string =>
  trial ? words.trial(trial.number) : words.inRun(figures.time(at));

const signedDiameter = (offM: number, figures: Figures): string =>
  `${offM > 0 ? '+' : ''}${figures.diameter(offM)}`;
