import { addDays, type CalendarDate, type Chance } from '../../src/core/foundation/index.js';
import type { BadWireLot } from './causes.js';
import { DAMP_SPELL } from './dry-room.js';

/** A string that went out to a player, as it truly was. */
export interface StringSent {
  readonly isFaulty: boolean;
  readonly wireLots: readonly string[];
  /** How much thicker worn gears made it, m. */
  readonly wornM: number;
  /** Its machine was set by a micrometer that reads too much, so that it came out too thin. */
  readonly measuredLarge: boolean;
  /** Left out for what lay there before the history began. */
  readonly made?: CalendarDate;
}

/** What a player will write, and when. */
export interface LetterToCome {
  readonly date: CalendarDate;
  readonly faultCode: LetterFault;
  readonly text: string;
}

type LetterFault =
  | 'buzzes'
  | 'broke'
  | 'broke-at-ball'
  | 'broke-in-length'
  | 'corroded'
  | 'dull'
  | 'feels-off'
  | 'out-of-tune'
  | 'wrap-loose';
type Written = readonly [faultCode: LetterFault, text: string];

/** Shares of players who write. Invented: most only buy elsewhere the next time. */
const WRITE_OF_FAULTY = 0.4;
const WRITE_OF_BAD_WIRE = 0.03;
const WRITE_OF_SOUND = 0.0006;
/** Of strings that worn gears made thicker by a micrometre so many more. */
const WRITE_OF_WORN_PER_M = 0.007 / 1e-6;
const WRITE_OF_THIN = 0.06;
const WRITE_MORE_OF_BAD_WIRE = 0.06;
const WRITE_OF_DAMP = 0.015;

const FAULTY: readonly Written[] = [
  ['wrap-loose', 'The wrap buzzes and comes loose near the bridge.'],
  ['out-of-tune', 'It will not play in tune above the fifth fret, whatever I do.'],
  ['broke-at-ball', 'It broke at the ball on the first evening.'],
];
const BAD_WIRE: readonly Written[] = [
  ['out-of-tune', 'The octave is off and it warbles.'],
  ['dull', 'It sounds dull beside its neighbours from the first day.'],
];
const SOUND: readonly Written[] = [
  ['broke', 'It broke after a week.'],
  ['dull', 'I expected it to be brighter.'],
];
const WORN: readonly Written[] = [
  ['wrap-loose', 'The winding shifts under the nail when I slide, as if it were not tight on the core.'],
  ['buzzes', 'There is a rattle in the string itself, and it moves when I bend it.'],
  ['dull', 'Dead from the start, and it feels thicker than the last one.'],
];
const THIN: readonly Written[] = [
  ['feels-off', 'It is slack beside its neighbours: the last set of the same gauges was firmer.'],
  ['feels-off', 'Same gauges as always, but this one gives way when I dig in.'],
];
const DAMP: readonly Written[] = [
  ['corroded', 'There were brown spots on it when I opened the bag.'],
  ['corroded', 'The plain strings were stained, and rough under the finger.'],
];

/** Whether a player writes about a string, and what. */
export function letterAbout(
  { isFaulty, wireLots }: StringSent,
  {
    sent,
    badLot,
    chance,
  }: { readonly sent: CalendarDate; readonly badLot: BadWireLot; readonly chance: Chance },
): LetterToCome | undefined {
  const isOfBadWire = wireLots.includes(badLot.lot);
  const share = isFaulty ? WRITE_OF_FAULTY : isOfBadWire ? WRITE_OF_BAD_WIRE : WRITE_OF_SOUND;
  if (chance.next() >= share) return undefined;
  return written(isFaulty ? FAULTY : isOfBadWire ? BAD_WIRE : SOUND, sent, chance);
}

/**
 * Whether a player writes about a string that nobody would call faulty: of a worn machine, set by a micrometer that reads
 * too much, or that lay in damp air. Drawn from a chance of its own, so that more letters change nothing else.
 */
export function letterOfCause(
  { wireLots, wornM, measuredLarge, made }: StringSent,
  {
    sent,
    badLot,
    chance,
  }: { readonly sent: CalendarDate; readonly badLot: BadWireLot; readonly chance: Chance },
): LetterToCome | undefined {
  const layDamp = sent > DAMP_SPELL.from && sent <= DAMP_SPELL.sentUntil && (made ?? '') <= DAMP_SPELL.to;
  const causes: readonly (readonly [share: number, of: readonly Written[]])[] = [
    [wornM * WRITE_OF_WORN_PER_M, WORN],
    [measuredLarge ? WRITE_OF_THIN : 0, THIN],
    [wireLots.includes(badLot.lot) ? WRITE_MORE_OF_BAD_WIRE : 0, BAD_WIRE],
    [layDamp ? WRITE_OF_DAMP : 0, DAMP],
  ];
  for (const [share, of] of causes) if (chance.next() < share) return written(of, sent, chance);
  return undefined;
}

function written(of: readonly Written[], sent: CalendarDate, chance: Chance): LetterToCome {
  const [faultCode, text] = chance.pick(of);
  return { date: addDays(sent, chance.whole(6, 40)), faultCode, text };
}
