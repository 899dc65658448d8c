import { useState } from 'react';
import type { ProblemDetails } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { Empty } from '../../parts/empty.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { StaleBox } from '../../parts/stale-box.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import styles from './look.module.css';
import { Part } from './part.js';

const REFUSED: ProblemDetails = {
  type: 'about:blank',
  title: '',
  status: 409,
  detail: '',
  code: 'look.example',
  instance: '/look',
  requestId: '',
};

/** Notices, sheets, refusals, and what stands where nothing is yet. */
export function TellingPart() {
  const words = useWords(LOOK_WORDS);
  const tell = useTell();
  const [open, setOpen] = useState<'plain' | 'grave'>();
  const close = () => setOpen(undefined);
  return (
    <>
      <Part title={words.telling}>
        <div className={styles.row}>
          <Button onClick={() => tell({ text: words.toldDone })}>{words.tellDone}</Button>
          <Button onClick={() => tell({ text: words.toldCare, kind: 'care' })}>{words.tellCare}</Button>
          <Button onClick={() => tell({ text: words.toldUndo, undo: () => tell({ text: words.toldDone }) })}>
            {words.tellUndo}
          </Button>
          <Button onClick={() => setOpen('plain')}>{words.askPlain}</Button>
          <Button onClick={() => setOpen('grave')}>{words.askGrave}</Button>
        </div>
        <Dialog title={words.sheetTitle} open={open === 'plain'} onClose={close}>
          <p>{words.sheetText}</p>
        </Dialog>
        <Dialog
          title={words.graveTitle}
          open={open === 'grave'}
          onClose={close}
          actions={
            <Button kind="grave" onClick={close}>
              {words.giveUp}
            </Button>
          }
        >
          <p>{words.graveText}</p>
        </Dialog>
      </Part>
      <Part title={words.refusals}>
        <ProblemBox problem={{ ...REFUSED, detail: words.problem }} />
        <ProblemBox problem={{ ...REFUSED, detail: words.problemMany, problems: words.problemPlaces }} />
        <StaleBox
          current={words.stale}
          yours={words.staleYours}
          busy={false}
          onWriteYours={() => tell({ text: words.toldDone })}
          onTakeCurrent={() => tell({ text: words.toldUndo })}
        />
      </Part>
      <Part title={words.empties}>
        <Empty what={words.emptyText}>
          <Button>{words.emptyDo}</Button>
        </Empty>
      </Part>
    </>
  );
}
