import { Link } from '@tanstack/react-router';
import { useEffect, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import { useMay } from '../../api/session.js';
import type { RecordOf } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { ProblemBox } from '../../parts/problem-box.js';
import { RoomTitle } from '../../parts/room-title.js';
import { StaleBox } from '../../parts/stale-box.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { AnswerPart } from './answer-part.js';
import { AnswerWaits } from './answer-waits.js';
import { DeclineDialog } from './decline-dialog.js';
import { type FieldFaults, faultsByField, NO_FAULTS } from './form-faults.js';
import { askTheSame, formOfRequest } from './form-of-request.js';
import { GivenPart } from './given-part.js';
import { LetterFields } from './letter-fields.js';
import { readRequestLine } from './read-request-line.js';
import { HasFields, LikesFields } from './request-fields.js';
import { cellsOf, type RequestForm } from './request-form.js';
import styles from './request-part.module.css';
import { RequestState } from './request-state.js';
import { fieldsOfRequest } from './request-words.js';
import { useRequestDesk } from './use-request-desk.js';
import { WishFields } from './wish-fields.js';

interface RequestRoomProps {
  readonly record: RecordOf<'request'> | undefined;
  readonly shop: Shop;
  /** Opens the request anew as it stands now. */
  readonly onOpenAnew: () => void;
}

/** A letter on one side, the sets that answer it on the other. */
export function RequestRoom({ record, shop, onOpenAnew }: RequestRoomProps) {
  const words = useWords(REQUESTS_WORDS);
  const may = useMay();
  const mayAnswer = may('request.resolve');
  const at = useRequestDesk(record, shop);
  const { form, answer, seen, refused, busy } = at;
  useFresh({ record, seen, isTouched: at.isTouched || busy, onOpenAnew });
  const faults = answer.ok ? NO_FAULTS : faultsByField(answer.fault, words);
  const shown = answer.ok ? NO_FAULTS : ofFilledFields(faults, form);
  const isWhole = useMemo(() => !seen || saysAll(seen, shop), [seen, shop]);
  const given = useMemo(() => seen?.body.answer?.strings.map(({ stringKey }) => stringKey), [seen]);
  return (
    <div className={desk.room}>
      <Head record={record} />
      {seen?.body.answer && <GivenPart record={seen} mayAnswer={mayAnswer} />}
      <ProblemBox problem={at.problem} />
      {refused && record && answer.ok && (
        <StaleBox
          current={fieldsOfRequest(record.body, words)}
          yours={fieldsOfRequest(
            {
              ...answer.value,
              player: at.letter.player,
              letter: at.letter.text,
              gauges: refused.offered.set,
            },
            words,
          )}
          busy={busy}
          onWriteYours={() => at.writeOver(record)}
          onTakeCurrent={onOpenAnew}
        />
      )}
      {!isWhole && <p className={styles.told}>{words.room.notShown}</p>}
      <form className={styles.form} onSubmit={(event) => event.preventDefault()}>
        <div className={styles.typed}>
          <LetterFields
            letter={at.letter}
            onLetter={at.setLetter}
            quantity={form.quantity}
            change={at.change}
            quantityFault={shown.quantity}
            playerMissing={at.isPlayerMissing}
          />
          <HasFields shop={shop} form={form} faults={shown} change={at.change} />
          <LikesFields shop={shop} form={form} faults={shown} change={at.change} />
        </div>
        <div className={styles.request}>
          <div className={desk.stack}>
            <WishFields form={form} faults={shown} change={at.change} />
            {!record && mayAnswer && (
              <>
                <Button busy={busy} disabled={!answer.ok} onClick={() => void at.keepWaiting()}>
                  {words.room.keepWaiting}
                </Button>
                <p className="small quiet">
                  {answer.ok ? words.room.keepWaitingHint : words.room.cannotKeep}
                </p>
              </>
            )}
          </div>
          {answer.ok ? (
            <AnswerPart
              answer={answer.value}
              given={given}
              take={mayAnswer ? at.take : undefined}
              busy={busy}
            />
          ) : (
            <AnswerWaits faults={faults} wrong={shown} />
          )}
        </div>
      </form>
    </div>
  );
}

function Head({ record }: Pick<RequestRoomProps, 'record'>) {
  const { room } = useWords(REQUESTS_WORDS);
  return (
    <header className={desk.head}>
      <div>
        <RoomTitle title={record ? room.title(record.body.player) : room.titleNew} />
        {record ? <RequestState record={record} /> : <p className={desk.lead}>{room.lead}</p>}
      </div>
      <div className={desk.row}>
        <Link to="/requests">{room.all}</Link>
        {record?.state === 'waiting' && <DeclineWaiting record={record} />}
      </div>
    </header>
  );
}

/** A letter may be declined before anybody answered it. */
function DeclineWaiting({ record }: { readonly record: RecordOf<'request'> }) {
  const { room } = useWords(REQUESTS_WORDS);
  const may = useMay();
  const [isOpen, setOpen] = useState(false);
  if (!may('request.resolve')) return null;
  return (
    <>
      <Button onClick={() => setOpen(true)}>{room.decline}</Button>
      <DeclineDialog record={record} open={isOpen} onClose={() => setOpen(false)} />
    </>
  );
}

interface Fresh extends Pick<RequestRoomProps, 'record' | 'onOpenAnew'> {
  readonly seen: RecordOf<'request'> | undefined;
  readonly isTouched: boolean;
}

/** Where nobody has typed yet, the request is shown as it stands: another may have answered it meanwhile. */
function useFresh({ record, seen, isTouched, onOpenAnew }: Fresh): void {
  const isOld = record !== undefined && seen !== undefined && record.version > seen.version;
  useEffect(() => {
    if (isOld && !isTouched) onOpenAnew();
  }, [isOld, isTouched, onOpenAnew]);
}

/** A field that is still empty is not wrong; what it lacks is said where the answer will stand. */
const ofFilledFields = (faults: FieldFaults, form: RequestForm): FieldFaults =>
  Object.fromEntries(
    Object.entries(faults).filter(
      ([field]) => field === 'wishes' || (field in form && form[field as keyof RequestForm] !== ''),
    ),
  );

/** Whether the fields can say all that is kept of the request. */
function saysAll({ body }: RecordOf<'request'>, shop: Shop): boolean {
  const read = readRequestLine(cellsOf(formOfRequest(body.request, body.quantity, shop)), shop);
  return read.ok && askTheSame(read.value, body.request);
}
