import { useState } from 'react';
import { cautionInWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { StateMark } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { CAUTION_WORDS } from '../../words/machine.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import { CautionsBox } from '../set-up/cautions-box.js';
import setUp from '../set-up/set-up.module.css';
import type { CautionsOfRun } from './use-cautions.js';

/** The cautions before a hand: in full until this person said once that they were read; from then on a line, the rest a touch away. */
export function CautionsHere({ cautions }: { readonly cautions: CautionsOfRun }) {
  const words = useWords(CAUTION_WORDS);
  const { sheet, toRead, isFirst, acknowledge } = cautions;
  if (toRead === undefined) return <CautionsBox sheet={sheet} />;
  if (toRead.length === 0) return <Line cautions={cautions} />;
  const isPart = toRead.length < sheet.cautions.length;
  return (
    <CautionsBox sheet={sheet} marked={isPart ? toRead : []}>
      <p>{isFirst ? words.first(sheet.machineName) : isPart ? words.more : words.again(sheet.machineName)}</p>
      <Button kind="main" size="floor" onClick={acknowledge}>
        {words.read}
      </Button>
    </CautionsBox>
  );
}

function Line({ cautions: { sheet } }: { readonly cautions: CautionsOfRun }) {
  const words = useWords(CAUTION_WORDS);
  const setUpWords = useWords(SET_UP_WORDS);
  const [isOpen, setOpen] = useState(false);
  if (isOpen)
    return (
      <CautionsBox sheet={sheet}>
        <Button size="floor" aria-expanded onClick={() => setOpen(false)}>
          {words.hide}
        </Button>
      </CautionsBox>
    );
  return (
    <section aria-labelledby="cautions" className={setUp.cautionsLine}>
      <h2 id="cautions">{setUpWords.cautions}</h2>
      <p>{sheet.cautions.map((caution) => cautionInWords(caution).title).join(' · ')}</p>
      <p className={setUp.cautionsRead}>
        <StateMark tone="done">{words.known}</StateMark>
        <Button size="floor" aria-expanded={false} onClick={() => setOpen(true)}>
          {words.show}
        </Button>
      </p>
    </section>
  );
}
