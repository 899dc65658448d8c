import { Link } from '@tanstack/react-router';
import type { CalibrationView } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import { FamiliesPart } from './families-part.js';
import { NextPart } from './next-part.js';
import { OddPart } from './odd-part.js';
import { RecipesPart } from './recipes-part.js';
import { ScatterPart } from './scatter-part.js';
import { TakeInPart } from './take-in-part.js';

export function CalibrationRoom() {
  const words = useWords(CALIBRATION_WORDS);
  const view = useReading('calibration', {});
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
        <Link to="/recipes" className={buttonClass()}>
          {words.toRecipes}
        </Link>
      </div>
      <Asked question={view} what={words.what}>
        {(seen) => (seen.strings === 0 ? <Empty what={words.nothingYet} /> : <Taught view={seen} />)}
      </Asked>
    </div>
  );
}

/** What was learned, then what to do about it, then what it rests on. */
function Taught({ view }: { readonly view: CalibrationView }) {
  const may = useMay();
  return (
    <>
      <NoisePart view={view} />
      {may('recipe.approve') && <TakeInPart view={view} />}
      <ScatterPart view={view} />
      <FamiliesPart view={view} />
      <RecipesPart view={view} />
      <OddPart view={view} />
      <NextPart view={view} />
    </>
  );
}

function NoisePart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const { noise, strings, runs, families, recipes } = view;
  const percent = (share: number) => `${figures.number(share * 100, 2)} %`;
  const facts = [
    {
      name: words.facts.strings,
      value: figures.number(strings),
      under: words.fromRuns(figures.number(runs)),
    },
    {
      name: words.facts.families,
      value: words.ofAll(families.filter(({ isCalibrated }) => isCalibrated).length, families.length),
      under: words.knownWell,
    },
    {
      name: words.facts.recipes,
      value: words.ofAll(
        recipes.filter(({ state }) => state === 'calibrated').length,
        recipes.filter((each) => each.strings > 0).length,
      ),
      under: words.calledCalibrated,
    },
    {
      name: words.facts.string,
      value: (
        <Explained name={words.facts.string} {...words.how.string}>
          {figures.slight(noise.stringM)}
        </Explained>
      ),
      under: words.byWeight(percent(noise.stringWeight)),
    },
    {
      name: words.facts.run,
      value: (
        <Explained name={words.facts.run} {...words.how.run}>
          {figures.slight(noise.runM)}
        </Explained>
      ),
      under: words.byWeight(percent(noise.runWeight)),
    },
  ];
  return <Facts facts={facts} />;
}
