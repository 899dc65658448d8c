import type { QualityView } from '../../../contract/index.js';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';

/** How much there is, how much of it was right the first time, and how well strings keep within the tolerance. */
export function FiguresPart({ view }: { readonly view: QualityView }) {
  const words = useWords(QUALITY_WORDS).facts;
  const figures = useFigures();
  const { runs, readings, firstPass, capability, toleranceM } = view;
  const percent = (share: number) => `${figures.number(share * 100, 1)} %`;
  return (
    <Facts
      facts={[
        { name: words.runs, value: figures.number(runs), under: words.readings(figures.number(readings)) },
        {
          name: words.firstPass,
          value: firstPass ? (
            <Explained name={words.firstPass} {...words.how.firstPass}>
              {percent(firstPass.share)}
            </Explained>
          ) : (
            words.notKnown
          ),
          under: firstPass
            ? words.firstPassOf(
                figures.number(firstPass.right),
                figures.number(firstPass.wound),
                `${percent(firstPass.from)} – ${percent(firstPass.to)}`,
              )
            : words.noneClosed,
        },
        {
          name: words.capability,
          value: capability ? (
            <Explained name={words.capability} {...words.how.capability}>
              {words.atLeast(figures.number(capability.ratio.atLeast, 2))}
            </Explained>
          ) : (
            words.notKnown
          ),
          under: capability
            ? words.capabilityOf(
                figures.number(capability.ratio.value, 2),
                figures.slight(toleranceM),
                figures.number(capability.runs),
              )
            : words.tooFew,
        },
        {
          name: words.off,
          value: capability ? figures.slight(capability.meanOffM) : words.notKnown,
          under: capability ? words.spread(figures.slight(capability.sigmaM)) : words.tooFew,
        },
      ]}
    />
  );
}
