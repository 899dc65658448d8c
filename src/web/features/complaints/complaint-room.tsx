import { Link } from '@tanstack/react-router';
import { complaintFaultInWords } from '../../../contract/index.js';
import { complaintFault } from '../../../core/stock/index.js';
import { useMay } from '../../api/session.js';
import { useRecord } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { AnswerPart } from './answer-part.js';
import type { ComplaintRecord } from './complaint-record.js';
import { ComplaintState } from './complaint-state.js';
import { CorrectDialog } from './correct-dialog.js';
import { TracePart } from './trace-part.js';

/** One complaint: what they write, what it is about, where it leads, and what is answered. */
export function ComplaintRoom({ id }: { readonly id: string }) {
  const { room: words } = useWords(COMPLAINTS_WORDS);
  return (
    <Asked question={useRecord('complaint', id)} what={words.what}>
      {(complaint) => <Complaint complaint={complaint} />}
    </Asked>
  );
}

function Complaint({ complaint }: { readonly complaint: ComplaintRecord }) {
  const { room: words, list } = useWords(COMPLAINTS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const { id, createdAt, state, body } = complaint;
  const fault = complaintFault(body.faultCode);
  const named = complaintFaultInWords(fault);
  return (
    <div className={desk.room}>
      <div>
        <Link to="/complaints">{words.back}</Link>
        <RoomTitle title={words.title(body.player)} />
      </div>
      <Facts
        facts={[
          { name: list.standing, value: <ComplaintState state={state} /> },
          { name: list.fault, value: fault === body.faultCode ? named : list.said(named, body.faultCode) },
          { name: words.written, value: figures.moment(createdAt) },
        ]}
      />
      <section aria-labelledby="letter" className={desk.part}>
        <h2 id="letter">{words.letter}</h2>
        <p>{body.text}</p>
        {may('complaint.close') && <CorrectDialog complaint={complaint} />}
      </section>
      <TracePart complaintId={id} />
      <AnswerPart key={id} complaint={complaint} />
    </div>
  );
}
