import { useNavigate } from '@tanstack/react-router';
import { useRef } from 'react';
import { ChangesPart } from '../features/import-orders/changes-part.js';
import { FilePart } from '../features/import-orders/file-part.js';
import { lineSpan } from '../features/import-orders/file-text.js';
import { outcomesOf, type Preview } from '../features/import-orders/mapping.js';
import { MappingPart } from '../features/import-orders/mapping-part.js';
import { MendPart } from '../features/import-orders/mend-part.js';
import { type Importing, useImport } from '../features/import-orders/use-import.js';
import { Button } from '../parts/button.js';
import desk from '../parts/desk.module.css';
import { useTell } from '../parts/notices.js';
import { ProblemBox } from '../parts/problem-box.js';
import { RoomTitle } from '../parts/room-title.js';
import { useWords } from '../words/language.js';
import { ORDERS_WORDS } from '../words/orders.js';

/** A file of orders is taken in: its text, what its headings mean, what would change, and then all of it or nothing. */
export function ImportOrdersPage() {
  const words = useWords(ORDERS_WORDS);
  const importing = useImport(words.usualSource);
  const textRef = useRef<HTMLTextAreaElement>(null);
  const { text, preview, problem } = importing;
  const goToLine = (line: number) => {
    const field = textRef.current;
    field?.focus();
    field?.setSelectionRange(...lineSpan(text, line));
    field?.scrollIntoView({ block: 'center' });
  };
  return (
    <div className={desk.room}>
      <div>
        <RoomTitle title={words.importTitle} />
        <p className={desk.lead}>{words.importLead}</p>
      </div>
      <FilePart importing={importing} textRef={textRef} />
      {problem?.code !== 'import.has-faults' && <ProblemBox problem={problem} />}
      {preview && (
        <>
          <MappingPart preview={preview} importing={importing} />
          <MendPart faults={preview.faults} goToLine={goToLine} />
          <ChangesPart preview={preview} />
          <TakeIn importing={importing} preview={preview} />
        </>
      )}
    </div>
  );
}

function TakeIn({ importing, preview }: { readonly importing: Importing; readonly preview: Preview }) {
  const words = useWords(ORDERS_WORDS);
  const tell = useTell();
  const navigate = useNavigate();
  const { new: fresh, changed } = outcomesOf(preview);
  if (preview.faults.length > 0) return <p className="care">{words.mendFirst(preview.faults.length)}</p>;
  if (fresh + changed === 0) return <p>{words.nothingToTake}</p>;
  const takeIn = async () => {
    if (!(await importing.takeIn())) return;
    tell({ text: words.tookIn(fresh, changed) });
    await navigate({ to: '/orders' });
  };
  return (
    <div className={desk.row}>
      <Button kind="main" busy={importing.busy} disabled={!importing.isFresh} onClick={takeIn}>
        {words.takeIn(fresh, changed)}
      </Button>
      {!importing.isFresh && <p className="care">{words.changedSince}</p>}
    </div>
  );
}
