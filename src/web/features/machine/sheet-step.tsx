import { unableInWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { SetUpPart } from '../set-up/set-up-part.js';
import { useMadeString } from '../set-up/use-made-string.js';
import { CautionsHere } from './cautions-here.js';
import type { CautionsOfRun } from './use-cautions.js';
import type { RunBook } from './use-run-book.js';
import type { RunSheet } from './use-run-sheet.js';

interface SheetStepProps {
  readonly book: RunBook;
  readonly made: RunSheet;
  readonly cautions: CautionsOfRun | undefined;
  readonly onOn: () => void;
}

/** The set-up sheet, cautions first; before the start with the way on at its end. */
export function SheetStep({ book: { run }, made, cautions, onOn }: SheetStepProps) {
  const words = useWords(MACHINE_WORDS);
  const string = useMadeString(made.kind === 'sheet' ? made.sheet.recipeId : '');
  if (made.kind === 'no-recipe') return <p>{words.noSheet}</p>;
  if (made.kind === 'unable') {
    return (
      <section className={styles.part}>
        <p>{words.cannotWind}</p>
        <ul>
          {made.reasons.map((reason) => (
            <li key={reason.code}>{unableInWords(reason)}</li>
          ))}
        </ul>
      </section>
    );
  }
  const { recipeVersion } = run.body;
  return (
    <>
      {run.state !== 'planned' && recipeVersion !== made.recipeVersion && (
        <p className="care">{words.otherRecipe(recipeVersion, made.recipeVersion)}</p>
      )}
      <SetUpPart
        sheet={made.sheet}
        made={string}
        cautions={cautions && <CautionsHere cautions={cautions} />}
      />
      {run.state === 'planned' && (
        <div className={styles.onward}>
          <Button kind="main" size="floor" onClick={onOn}>
            {words.toSpools}
          </Button>
        </div>
      )}
    </>
  );
}
