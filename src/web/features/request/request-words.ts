import { gaugesInWords, tuningInWords } from '../../../contract/index.js';
import type { PlayerRequest } from '../../../core/orders/index.js';
import type { ChosenSet } from '../../../core/sets/index.js';
import type { RecordOf } from '../../api/use-records.js';
import type { FieldWords } from '../../parts/fields-apart.js';
import type { REQUESTS_WORDS } from '../../words/requests.js';
import { gaugesOf } from './set-words.js';

type Body = RecordOf<'request'>['body'];
type Words = Pick<(typeof REQUESTS_WORDS)['en'], 'stale' | 'list'>;

/** A request before it is kept: the set that would be given stands for the answer. */
interface Unsent {
  readonly player: string;
  readonly letter: string;
  readonly quantity: number;
  readonly request: PlayerRequest;
  readonly gauges: ChosenSet;
}

/** `baritone 27, B1 F#2 B2 F#3 B3 D#4`: instrument and tuning in short. */
export const askedInShort = (request: Body['request'] | PlayerRequest): string =>
  `${request.instrument.name}, ${tuningInWords(request as Body['request'])}`;

/** The gauges of the answer; empty where there is none. */
export const answerInShort = ({ answer }: Pick<Body, 'answer'>): string =>
  answer ? gaugesInWords(answer.strings.map(({ spec }) => spec)) : '';

/** A request field by field, to be laid beside another version of it. */
export function fieldsOfRequest(body: Body | Unsent, { stale, list }: Words): readonly FieldWords[] {
  const answer = 'gauges' in body ? gaugesOf(body.gauges) : answerInShort(body);
  return [
    { name: stale.player, value: body.player },
    { name: stale.quantity, value: String(body.quantity) },
    { name: stale.letter, value: body.letter },
    { name: stale.asked, value: askedInShort(body.request) },
    { name: stale.answer, value: answer === '' ? list.noAnswer : answer },
  ];
}
