import { Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import type { ComplaintRecord } from './complaint-record.js';
import { useKept } from './use-kept.js';

/** What is answered, and whether the matter is closed. A draft stays until it is kept. */
export function AnswerPart({ complaint }: { readonly complaint: ComplaintRecord }) {
  const { room: words } = useWords(COMPLAINTS_WORDS);
  const may = useMay();
  const { state, body } = complaint;
  return (
    <section aria-labelledby="answer" className={desk.part}>
      <h2 id="answer">{words.answer}</h2>
      {body.answer !== undefined && <p>{body.answer}</p>}
      {body.answer === undefined && state !== 'open' && <p className="quiet">{words.noAnswer}</p>}
      {may('complaint.close') &&
        (state === 'closed' ? <Reopen complaint={complaint} /> : <Open complaint={complaint} />)}
    </section>
  );
}

function Open({ complaint }: { readonly complaint: ComplaintRecord }) {
  const { room: words } = useWords(COMPLAINTS_WORDS);
  const tell = useTell();
  const { id: complaintId, version: expectedVersion, state } = complaint;
  const { draft, setDraft, forget } = useKept(`answer.${complaintId}`, '');
  const answer = useDo('answer-complaint');
  const close = useDo('close-complaint');
  const reopen = useDo('reopen-complaint');
  const keep = async () => {
    const done = await answer.run({ complaintId, expectedVersion, answer: draft.trim() });
    if (!done.ok) return;
    forget();
    tell({ text: words.answered });
  };
  const end = async () => {
    const done = await close.run({ complaintId, expectedVersion });
    if (!done.ok) return;
    const seen = { complaintId, expectedVersion: done.value.version };
    tell({ text: words.closed, undo: () => reopen.run({ ...seen, reason: words.undone }) });
  };
  return (
    <div className={desk.stack}>
      {state === 'open' && (
        <>
          <Textarea
            label={words.yourAnswer}
            size="md"
            autosize
            minRows={3}
            value={draft}
            onChange={(event) => setDraft(event.currentTarget.value)}
          />
          {draft !== '' && <p className="quiet small">{words.draftStays}</p>}
        </>
      )}
      <ProblemBox problem={answer.problem ?? close.problem} />
      <div className={desk.row}>
        {state === 'open' && (
          <Button kind="main" busy={answer.busy} disabled={draft.trim() === ''} onClick={() => void keep()}>
            {words.keepAnswer}
          </Button>
        )}
        <Button busy={close.busy} onClick={() => void end()}>
          {words.close}
        </Button>
      </div>
    </div>
  );
}

function Reopen({ complaint }: { readonly complaint: ComplaintRecord }) {
  const { room: words } = useWords(COMPLAINTS_WORDS);
  const tell = useTell();
  const [reason, setReason] = useState('');
  const reopen = useDo('reopen-complaint');
  const again = async () => {
    const seen = { complaintId: complaint.id, expectedVersion: complaint.version };
    const done = await reopen.run({ ...seen, reason: reason.trim() });
    if (done.ok) tell({ text: words.reopened });
  };
  return (
    <div className={desk.stack}>
      <div className={desk.narrowField}>
        <TextInput
          label={words.reason}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      </div>
      <ProblemBox problem={reopen.problem} />
      <div>
        <Button busy={reopen.busy} disabled={reason.trim() === ''} onClick={() => void again()}>
          {words.reopen}
        </Button>
      </div>
    </div>
  );
}
