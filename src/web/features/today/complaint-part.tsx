import { Textarea } from '@mantine/core';
import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { useRecord } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { TODAY_WORDS } from '../../words/today.js';
import styles from './needs-part.module.css';

interface ComplaintPartProps {
  readonly complaintId: string;
  readonly player: string;
}

/** A complaint is mended where it is read: there is no more to it than what they write and what we answer. */
export function ComplaintPart({ complaintId, player }: ComplaintPartProps) {
  const words = useWords(TODAY_WORDS);
  const may = useMay();
  const [open, setOpen] = useState(false);
  if (!may('complaint.close')) return null;
  return (
    <div>
      <Button onClick={() => setOpen(true)}>{words.answer}</Button>
      <Dialog title={words.complaintTitle(player)} open={open} onClose={() => setOpen(false)}>
        <Complaint complaintId={complaintId} onDone={() => setOpen(false)} />
      </Dialog>
    </div>
  );
}

function Complaint({ complaintId, onDone }: { readonly complaintId: string; readonly onDone: () => void }) {
  const words = useWords(TODAY_WORDS);
  const tell = useTell();
  const [text, setText] = useState('');
  const answer = useDo('answer-complaint');
  const close = useDo('close-complaint');
  const reopen = useDo('reopen-complaint');
  return (
    <Asked question={useRecord('complaint', complaintId)} what={words.what}>
      {({ version: expectedVersion, body }) => (
        <>
          <section aria-label={words.theirWords}>
            <p className="quiet small">{words.theirWords}</p>
            <p className={styles.letter}>{body.text}</p>
          </section>
          <Textarea
            label={words.yourAnswer}
            size="md"
            autosize
            minRows={3}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <ProblemBox problem={answer.problem ?? close.problem} />
          <div className={styles.doings}>
            <Button
              kind="main"
              disabled={text.trim() === ''}
              busy={answer.busy}
              onClick={async () => {
                const done = await answer.run({ complaintId, expectedVersion, answer: text.trim() });
                if (!done.ok) return;
                tell({ text: words.answered(body.player) });
                onDone();
              }}
            >
              {words.keepAnswer}
            </Button>
            <Button
              busy={close.busy}
              onClick={async () => {
                const done = await close.run({ complaintId, expectedVersion });
                if (!done.ok) return;
                const { version } = done.value;
                tell({
                  text: words.closed(body.player),
                  undo: () => reopen.run({ complaintId, expectedVersion: version, reason: words.closeIt }),
                });
                onDone();
              }}
            >
              {words.closeIt}
            </Button>
          </div>
        </>
      )}
    </Asked>
  );
}
