import { Checkbox } from '@mantine/core';
import { useMemo, useState } from 'react';
import { Button } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { DIAL_IN_WORDS, PRACTICE_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { PositionPanel, type WoundString } from '../dial-in/position-panel.js';
import { HowItWent } from './how-it-went.js';
import { type Deed, lastTurns, type PracticeRun, practised } from './practice-run.js';
import { PractisedStrings } from './practised-strings.js';

interface PractisedRunProps {
  readonly run: PracticeRun;
  readonly onAgain: () => void;
}

/** The string that is practised on: any would do. m. */
const WANTED_M = 0.0006604;

/** The same screen as at the machine, the machine behind it reckoned. */
export function PractisedRun({ run, onAgain }: PractisedRunProps) {
  const words = useWords(PRACTICE_WORDS);
  const dialWords = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  const [deeds, setDeeds] = useState<readonly Deed[]>([]);
  const [isOver, setOver] = useState(false);
  const [isAdviceShown, setAdviceShown] = useState(true);
  const now = useMemo(() => practised(run, deeds), [run, deeds]);
  const { character, advices, strings, standsAt } = now;
  const isTwo = character.positions === 2;
  const hasAll = standsAt.every((setting) => setting !== undefined);
  const wind = ({ position, setting, setBy }: WoundString) => {
    const { decision } = advices[position - 1]!;
    const past = setBy === 'advice' && 'move' in decision ? decision.move.past : undefined;
    const deed = { kind: 'string', position: position - 1, setting, setBy } as const;
    setDeeds([...deeds, past === undefined ? deed : { ...deed, past }]);
  };
  const letRun = () => {
    if (isAdviceShown) setDeeds([...deeds, ...lastTurns(now)]);
    setOver(true);
  };
  return (
    <section aria-label={words.title} className={styles.part}>
      <h2>{words.kinds[run.kind][0]}</h2>
      <p>{words.aim(figures.diameter(WANTED_M), figures.slight(character.toleranceM))}</p>
      {isOver ? (
        <HowItWent run={run} now={now} onAgain={onAgain} />
      ) : (
        <>
          <Checkbox
            label={words.showAdvice}
            checked={isAdviceShown}
            onChange={(event) => setAdviceShown(event.currentTarget.checked)}
          />
          {advices.map((advice, at) => (
            <PositionPanel
              key={advice.position}
              at={{ advice, standsAt: standsAt[at], isToMeasure: false }}
              position={isTwo ? (at === 0 ? 1 : 2) : undefined}
              knob={character.knob}
              unit=""
              isAdviceShown={isAdviceShown}
              asksTurns={false}
              onString={wind}
            />
          ))}
          <div className={styles.onward}>
            <Button
              kind={advices.every(({ decision }) => decision.kind === 'run') ? 'main' : 'plain'}
              size="floor"
              disabled={!hasAll}
              onClick={letRun}
            >
              {dialWords.letRun}
            </Button>
            {advices.map(
              ({ decision, position }) =>
                (decision.kind === 'measure-again' || !isAdviceShown) &&
                standsAt[position] !== undefined && (
                  <Button
                    key={position}
                    size="floor"
                    onClick={() => setDeeds([...deeds, { kind: 'again', position }])}
                  >
                    {isTwo ? `${words.measureAgain}, ${position + 1}` : words.measureAgain}
                  </Button>
                ),
            )}
            <Button size="floor" disabled={deeds.length === 0} onClick={() => setDeeds(deeds.slice(0, -1))}>
              {words.undo}
            </Button>
            {!hasAll && <span className="quiet">{words.needsAll}</span>}
          </div>
        </>
      )}
      <h3>{words.measured}</h3>
      {strings.length === 0 ? (
        <Empty what={words.none} />
      ) : (
        <PractisedStrings strings={strings} wantedM={WANTED_M} isTwo={isTwo} />
      )}
    </section>
  );
}
