import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import type { RecipeChoice } from '../../../core/recipes/index.js';
import type { SeatModel } from '../../../core/string/index.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { MEASURES, type Measure, wayKey } from './measures.js';
import { SectionFigure } from './section-figure.js';
import type { ShownWay } from './shown-way.js';
import { TradeOffPicture } from './trade-off-picture.js';
import styles from './ways.module.css';
import { WaysTable } from './ways-table.js';

interface WaysLinkedProps {
  readonly front: readonly RecipeChoice[];
  readonly beaten: readonly RecipeChoice[];
  /** The way that the recipe has now, by its key. */
  readonly now: string;
  readonly seat: SeatModel | undefined;
  readonly onTake?: (way: RecipeChoice) => void;
}

/** Picture and table of the ways, linked: what is pointed at or marked in the one is so in the other. */
export function WaysLinked({ front, beaten, now, seat, onTake }: WaysLinkedProps) {
  const words = useWords(RECIPES_WORDS);
  const [across, setAcross] = useState<Measure>('stiffness');
  const [up, setUp] = useState<Measure>('stress');
  const [pointed, setPointed] = useState<string>();
  const [marked, setMarked] = useState<string>();
  const shown = [...shownWays(front, true, now), ...shownWays(beaten, false, now)];
  const chosen = shown.find(({ key }) => key === marked);
  const link = { shown, pointed, marked: chosen?.key, onPoint: setPointed, onMark: setMarked };
  return (
    <div className={styles.linked}>
      <div className={desk.stack}>
        <div className={desk.narrow}>
          <MeasureSelect label={words.across} value={across} onChange={setAcross} />
          <MeasureSelect label={words.up} value={up} onChange={setUp} />
        </div>
        <TradeOffPicture
          {...link}
          across={across}
          up={up}
          onTake={(key) => {
            const way = shown.find((one) => one.key === key)?.way;
            if (way && onTake) onTake(way);
          }}
        />
        <div className={styles.marked}>
          <h3>{words.marked}</h3>
          {chosen ? (
            <>
              <p>{chosen.key}</p>
              <SectionFigure construction={chosen.way.construction} seat={seat} />
              {onTake && !chosen.isNow && (
                <div>
                  <Button onClick={() => onTake(chosen.way)}>{words.take}</Button>
                </div>
              )}
            </>
          ) : (
            <p className="quiet">{words.noneMarked}</p>
          )}
        </div>
      </div>
      <WaysTable {...link} />
    </div>
  );
}

const shownWays = (ways: readonly RecipeChoice[], isAhead: boolean, now: string): readonly ShownWay[] =>
  ways.map((way) => ({ key: wayKey(way), way, isAhead, isNow: wayKey(way) === now }));

interface MeasureSelectProps {
  readonly label: string;
  readonly value: Measure;
  readonly onChange: (measure: Measure) => void;
}

function MeasureSelect({ label, value, onChange }: MeasureSelectProps) {
  const words = useWords(RECIPES_WORDS);
  return (
    <NativeSelect
      label={label}
      value={value}
      data={MEASURES.map((measure) => ({ value: measure, label: words.measures[measure] }))}
      onChange={(event) => onChange(event.currentTarget.value as Measure)}
    />
  );
}
