import { fail, type Result, succeed } from '../foundation/index.js';
import { parseForce, parseGaugeWithKind } from '../units/index.js';
import type { Wishes } from './order.js';

/** A phrase of the wishes that means nothing to us. */
export interface WishFault {
  readonly code: 'unreadable';
  readonly phrase: string;
}

/** The phrases that a wishes cell may hold, by example; what a fault offers as mend. */
export const WISH_EXAMPLES = [
  'feel',
  'even',
  'even 75 N',
  'graded 3 %',
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
  let wishes: Wishes = { target: 'feel' };
  for (const phrase of text.split(';').map((part) => part.trim().toLowerCase())) {
    if (phrase === '') continue;
    const understood = understand(phrase, wishes);
    if (!understood) return fail({ code: 'unreadable', phrase });
    wishes = understood;
  }
  return succeed(wishes);
}

type Phrase = readonly [RegExp, (groups: readonly string[], wishes: Wishes) => Wishes | undefined];

const SHARE = '(\\d+(?:\\.\\d+)?) ?%';

const PHRASES: readonly Phrase[] = [
  [/^(?:same )?feel$/, (_, wishes) => ({ ...wishes, target: 'feel' })],
  [/^even$/, (_, wishes) => ({ ...wishes, target: 'even' })],
  [/^even (.+)$/, ([force], wishes) => withPulls(wishes, 'even', [force ?? ''])],
  [
    new RegExp(`^graded ${SHARE}$`),
    ([share], wishes) => ({ ...wishes, target: 'graded', gradePerString: asShare(share) }),
  ],
  [/^pulls (.+)$/, ([list], wishes) => withPulls(wishes, 'free', splitForces(list ?? ''))],
  [
    new RegExp(`^(heavier|lighter) bass(?:es)? ${SHARE}$`),
    ([way, share], wishes) => ({ ...wishes, heavierBass: signed(way, share) }),
  ],
  [
    new RegExp(`^(heavier|lighter) trebles? ${SHARE}$`),
    ([way, share], wishes) => ({ ...wishes, heavierTreble: signed(way, share) }),
  ],
  [new RegExp(`^bend ${SHARE}$`), ([share], wishes) => withBend(wishes, asShare(share))],
  [/^wound third$/, (_, wishes) => ({ ...wishes, woundThird: true })],
  [/^plain third$/, (_, wishes) => ({ ...wishes, woundThird: false })],
  [/^string (\d+) ?= ?(.+)$/, ([position, gauge], wishes) => withPin(wishes, Number(position), gauge ?? '')],
];

function understand(phrase: string, wishes: Wishes): Wishes | undefined {
  for (const [form, apply] of PHRASES) {
    const match = form.exec(phrase);
    if (match) return apply(match.slice(1), wishes);
  }
  return undefined;
}

function withPulls(wishes: Wishes, target: 'even' | 'free', forces: readonly string[]): Wishes | undefined {
  const pullsN: number[] = [];
  for (const force of forces) {
    const read = parseForce(force);
    if (!read.ok) return undefined;
    pullsN.push(read.value);
  }
  return pullsN.length === 0 ? undefined : { ...wishes, target, pullsN };
}

/** `70 N 72 N` and `70N, 72N` alike: a force ends with its unit. */
const splitForces = (list: string): readonly string[] =>
  list.match(/[\d.,]+\s*[a-z]+/g)?.map((force) => force.replace(/^,/, '')) ?? [];

function withPin(wishes: Wishes, position: number, gauge: string): Wishes | undefined {
  const read = parseGaugeWithKind(gauge);
  if (!read.ok || position < 1) return undefined;
  return { ...wishes, pins: [...(wishes.pins ?? []), { position, string: read.value }] };
}

const withBend = (wishes: Wishes, bendShare: number): Wishes | undefined =>
  bendShare >= 0 && bendShare <= 1 ? { ...wishes, bendShare } : undefined;

const asShare = (percent: string | undefined): number => Number(percent) / 100;
const signed = (way: string | undefined, percent: string | undefined): number =>
  way === 'lighter' ? -asShare(percent) : asShare(percent);
