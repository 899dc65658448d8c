import { useNavigate } from '@tanstack/react-router';
import { useCallback, useRef, useState } from 'react';
import type { InputNamed } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { PlayerRequest } from '../../../core/orders/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import type { RecordOf } from '../../api/use-records.js';
import { useTell } from '../../parts/notices.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import type { OfferedSet } from './answer-form.js';
import { formOfRequest } from './form-of-request.js';
import type { Letter } from './letter-fields.js';
import { BLANK_FORM } from './request-form.js';
import { useFormAnswer } from './use-form-answer.js';

/** What was asked when an answer was refused because somebody had changed the request meanwhile. */
interface Refused {
  readonly offered: OfferedSet;
}

/** The desk at which a letter is answered: what is typed of it, what the shop has of it, and what can be done. */
export function useRequestDesk(record: RecordOf<'request'> | undefined, shop: Shop) {
  const { answer: words, room } = useWords(REQUESTS_WORDS);
  const tell = useTell();
  const navigate = useNavigate();
  const [first] = useState(() => firstOf(record, shop));
  const [id] = useState(() => record?.id ?? freshId());
  const [seen, setSeen] = useState(record);
  const [letter, setLetter] = useState<Letter>(first.letter);
  const [isPlayerMissing, setPlayerMissing] = useState(false);
  const [refused, setRefused] = useState<Refused>();
  const { form, change, answer } = useFormAnswer(shop, first.form);
  const resolving = useDo('resolve-request');
  const receiving = useDo('receive-request');

  /** What is kept beside the answer; undefined where it cannot be kept yet. */
  const asked = () => {
    if (letter.player.trim() === '') {
      setPlayerMissing(true);
      return undefined;
    }
    if (!answer.ok) return undefined;
    const { request, quantity } = answer.value;
    return { player: letter.player.trim(), letter: letter.text, quantity, request: asSent(request) };
  };

  const answerWith = async (offered: OfferedSet, over = seen) => {
    const sent = asked();
    if (!sent) return;
    const version = over ? { expectedVersion: over.version } : {};
    const done = await resolving.run({ id, ...version, ...sent, chosen: [...offered.keys] });
    if (!done.ok) {
      setRefused(done.fault.code === 'stale-version' ? { offered } : undefined);
      return;
    }
    setRefused(undefined);
    setSeen(done.value);
    tell({ text: words.answered(sent.player) });
    if (!record) await navigate({ to: '/requests/$id', params: { id }, replace: true });
  };

  const keepWaiting = async () => {
    const sent = asked();
    if (!sent) return;
    const done = await receiving.run({ id, ...sent });
    if (!done.ok) return;
    tell({ text: room.kept });
    await navigate({ to: '/requests/$id', params: { id }, replace: true });
  };

  // One function for the life of the desk, so that sets already drawn are not drawn again for it.
  const latest = useRef(answerWith);
  latest.current = answerWith;
  const take = useCallback((offered: OfferedSet) => void latest.current(offered), []);

  return {
    form,
    change,
    answer,
    letter,
    setLetter,
    seen,
    isPlayerMissing,
    isTouched: form !== first.form || letter !== first.letter,
    take,
    keepWaiting,
    busy: resolving.busy || receiving.busy,
    problem: refused ? undefined : (resolving.problem ?? receiving.problem),
    refused,
    writeOver: (current: RecordOf<'request'>) => {
      setSeen(current);
      if (refused) void answerWith(refused.offered, current);
    },
  };
}

const firstOf = (record: RecordOf<'request'> | undefined, shop: Shop) => ({
  form: record ? formOfRequest(record.body.request, record.body.quantity, shop) : BLANK_FORM,
  letter: { player: record?.body.player ?? '', text: record?.body.letter ?? '' },
});

/** Only read here, and by the contract's word free to be written to. */
const asSent = (request: PlayerRequest) => request as InputNamed<'resolve-request'>['request'];
