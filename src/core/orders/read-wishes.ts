import { fail, type Result, succeed } from '../foundation/index.js';
import { parseForce, parseGaugeWithKind } from '../units/index.js';
import type { Wishes } from './order.js';

/** A phrase of the wishes that cannot stand. */
export interface WishFault {
  /**
   * Unreadable: it means nothing to us. Out of range: it asks for what no string or hand could give.
   * Contradiction: an earlier phrase aims at something else.
   */
  readonly code: 'unreadable' | 'out-of-range' | 'contradiction';
  readonly phrase: string;
}

/** The phrases that a wishes cell may hold, by example; what a fault offers as mend. */
export const WISH_EXAMPLES = [
  'feel',
  'even',
  'even 75 N',
  'graded 3 %',
  'graded 3 % from 70 N',
  'pulls 70 N 72 N 74 N 76 N 78 N 80 N',
  'heavier bass 5 %',
  'lighter treble 5 %',
  'bend 50 %',
  'wound third',
  'plain third',
  'string 1 = 10',
] as const;

/**
 * Reads a player's wishes: phrases apart by `;`. Without any, the feel of the set that is liked is the aim.
 * @example readWishes('even 75 N; heavier bass 5 %')
 */
export function readWishes(text: string): Result<Wishes, WishFault> {
  let wishes: Partial<Wishes> = {};
  for (const phrase of text.split(';').map((part) => part.trim())) {
    if (phrase === '') continue;
    const understood = understand(phrase.toLowerCase());
    if (typeof understood === 'string') return fail({ code: understood, phrase });
    if (contradict(wishes, understood)) return fail({ code: 'contradiction', phrase });
    wishes = { ...wishes, ...understood, ...joinedPins(wishes, understood) };
  }
  return succeed({ target: 'feel', ...wishes });
}

/** What a phrase says, or why it cannot be taken. */
type Understood = Partial<Wishes> | Exclude<WishFault['code'], 'contradiction'>;

type Phrase = readonly [RegExp, (groups: readonly string[]) => Understood];

const SHARE = '(\\d+(?:\\.\\d+)?) ?%';

/** Pulls half again or by half: past that a wish is a slip of the pen. Our own limits. */
const MOST_CHANGE = 0.5;
/** From string to string: a set of six would end at two and a half times its treble's pull. */
const MOST_GRADE = 0.2;

const PHRASES: readonly Phrase[] = [
  [/^(?:same )?feel$/, () => ({ target: 'feel' })],
  [/^even$/, () => ({ target: 'even' })],
  [/^even (.+)$/, ([force = '']) => withPulls({ target: 'even' }, [force])],
  [new RegExp(`^graded ${SHARE}$`), ([share]) => graded(asShare(share))],
  [
    new RegExp(`^graded ${SHARE} from (.+)$`),
    ([share, force = '']) => {
      const grade = graded(asShare(share));
      return typeof grade === 'string' ? grade : withPulls(grade, [force]);
    },
  ],
  [/^pulls (.+)$/, ([list = '']) => withPulls({ target: 'free' }, splitForces(list))],
  [
    new RegExp(`^(heavier|lighter) bass(?:es)? ${SHARE}$`),
    ([way, share]) => within(MOST_CHANGE, asShare(share)) ?? { heavierBass: signed(way, share) },
  ],
  [
    new RegExp(`^(heavier|lighter) trebles? ${SHARE}$`),
    ([way, share]) => within(MOST_CHANGE, asShare(share)) ?? { heavierTreble: signed(way, share) },
  ],
  [new RegExp(`^bend ${SHARE}$`), ([share]) => within(1, asShare(share)) ?? { bendShare: asShare(share) }],
  [/^wound third$/, () => ({ woundThird: true })],
  [/^plain third$/, () => ({ woundThird: false })],
  [/^string (\d+) ?= ?(.+)$/, ([position, gauge = '']) => pin(Number(position), gauge)],
];

function understand(phrase: string): Understood {
  for (const [form, apply] of PHRASES) {
    const match = form.exec(phrase);
    if (match) return apply(match.slice(1));
  }
  return 'unreadable';
}

/** Two aims, or two gauges for one string. */
const contradict = (before: Partial<Wishes>, now: Partial<Wishes>): boolean =>
  (before.target !== undefined && now.target !== undefined) ||
  (now.pins ?? []).some(({ position }) => before.pins?.some((pinned) => pinned.position === position));

const joinedPins = (before: Partial<Wishes>, { pins }: Partial<Wishes>): Partial<Wishes> =>
  pins && before.pins ? { pins: [...before.pins, ...pins] } : {};

function withPulls(aim: Partial<Wishes>, forces: readonly string[]): Understood {
  const pullsN: number[] = [];
  for (const force of forces) {
    const read = parseForce(force);
    if (!read.ok) return read.fault.code === 'unit.out-of-range' ? 'out-of-range' : 'unreadable';
    pullsN.push(read.value);
  }
  return pullsN.length === 0 ? 'unreadable' : { ...aim, pullsN };
}

/** `70 N 72 N` and `70N, 72N` alike: a force ends with its unit. */
const splitForces = (list: string): readonly string[] =>
  list.match(/[\d.,]+\s*[a-z]+/g)?.map((force) => force.replace(/^,/, '')) ?? [];

function pin(position: number, gauge: string): Understood {
  const read = parseGaugeWithKind(gauge);
  if (position < 1 || (!read.ok && read.fault.code !== 'unit.out-of-range')) return 'unreadable';
  return read.ok ? { pins: [{ position, string: read.value }] } : 'out-of-range';
}

const graded = (gradePerString: number): Understood =>
  within(MOST_GRADE, gradePerString) ?? { target: 'graded', gradePerString };

const within = (most: number, value: number): 'out-of-range' | undefined =>
  value <= most ? undefined : 'out-of-range';

const asShare = (percent: string | undefined): number => Number(percent) / 100;
const signed = (way: string | undefined, percent: string | undefined): number =>
  way === 'lighter' ? -asShare(percent) : asShare(percent);
