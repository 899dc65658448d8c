import { useState } from 'react';
import { complaintFault } from '../../../core/stock/index.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { type About, AboutFields, aboutAsSent } from './about-fields.js';
import type { ComplaintRecord } from './complaint-record.js';

/** What a complaint is about is put right: its fault, its pack, its string. */
export function CorrectDialog({ complaint }: { readonly complaint: ComplaintRecord }) {
  const { room: words } = useWords(COMPLAINTS_WORDS);
  const [about, setAbout] = useState<About>();
  const correct = useDo('correct-complaint');
  const tell = useTell();
  const { id: complaintId, version: expectedVersion } = complaint;
  const end = () => {
    correct.forget();
    setAbout(undefined);
  };
  const keep = async (said: About) => {
    const sent = aboutAsSent(said, complaintFault(complaint.body.faultCode));
    const done = await correct.run({ complaintId, expectedVersion, ...sent });
    if (!done.ok) return;
    end();
    tell({ text: words.corrected });
  };
  return (
    <div>
      <Button onClick={() => setAbout(aboutOf(complaint))}>{words.correct}</Button>
      <Dialog
        title={words.correctTitle}
        open={about !== undefined}
        onClose={end}
        actions={
          <Button kind="main" busy={correct.busy} onClick={() => about && void keep(about)}>
            {words.correct}
          </Button>
        }
      >
        {about && (
          <>
            <AboutFields
              about={about}
              change={(change) => setAbout((before) => before && { ...before, ...change })}
            />
            <ProblemBox problem={correct.problem} />
          </>
        )}
      </Dialog>
    </div>
  );
}

const aboutOf = ({ body }: ComplaintRecord): About => ({
  fault: complaintFault(body.faultCode),
  packId: body.packId ?? '',
  lotId: body.lotId ?? '',
  position: body.position === undefined ? '' : String(body.position),
});
