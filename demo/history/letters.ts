import { addDays, type CalendarDate, type Chance } from '../../src/core/foundation/index.js';
import type { BadWireLot } from './causes.js';

/** A string that went out to a player, as it truly was. */
export interface StringSent {
  readonly isFaulty: boolean;
  readonly wireLots: readonly string[];
}

/** What a player will write, and when. */
export interface LetterToCome {
  readonly date: CalendarDate;
  readonly faultCode: string;
  readonly text: string;
}

/** Shares of players who write. Invented: most only buy elsewhere the next time. */
const WRITE_OF_FAULTY = 0.4;
const WRITE_OF_BAD_WIRE = 0.03;
const WRITE_OF_SOUND = 0.0006;

const FAULTY = [
  ['loose-wrap', 'The wrap buzzes and comes loose near the bridge.'],
  ['false-pitch', 'It will not play in tune above the fifth fret, whatever I do.'],
  ['broke', 'It broke at the end on the first evening.'],
] as const;
const BAD_WIRE = [
  ['false-pitch', 'The octave is off and it warbles.'],
  ['dull', 'It sounds dull beside its neighbours from the first day.'],
] as const;
const SOUND = [
  ['broke', 'It broke after a week.'],
  ['dull', 'I expected it to be brighter.'],
] as const;

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
  const [faultCode, text] = chance.pick<readonly [string, string]>(
    isFaulty ? FAULTY : isOfBadWire ? BAD_WIRE : SOUND,
  );
  return { date: addDays(sent, chance.whole(6, 40)), faultCode, text };
}
