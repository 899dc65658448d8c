import type { DryRoomClimate } from './dry-room.js';

/** The dryer stood still over the weekend: what the first reading of the last day says. Invented. */
export const DRYER_STOOD_STILL: DryRoomClimate = {
  room: 'dry room',
  temperatureC: 24.6,
  relativeHumidity: 0.612,
};

/** Orders that come by telephone on the afternoon before: due how many days after, and whether the shelf is to suffice. */
export interface OrderByHand {
  readonly player: string;
  readonly set: string;
  readonly note: string;
  readonly dueInDays: number;
  /** Sets; or as many more than the shelf has strings for as make this share of the kinds run short. */
  readonly sets: number | { readonly shareShort: number };
}

/** Dates are counted from the day on which they are entered, a Friday in the invented year. */
export const ORDERS_BY_HAND: readonly OrderByHand[] = [
  { player: 'Ilonek Copperstead', set: 'Meadow six, 10', note: 'will collect', dueInDays: 3, sets: 2 },
  { player: 'Delsel Winnowcroft', set: 'Kiln six, 10', note: '', dueInDays: 3, sets: 1 },
  {
    player: 'Marrowbeck music room',
    set: 'Meadow six, 11',
    note: 'for the spring course, as soon as can be',
    dueInDays: 0,
    sets: { shareShort: 0.34 },
  },
  {
    player: 'Fallowholt school of music',
    set: 'Hazel bronze, 12',
    note: '',
    dueInDays: 7,
    sets: { shareShort: 0.34 },
  },
  {
    player: 'Quarrelmere bass club',
    set: 'Cellar bass five',
    note: 'invoice with the parcel',
    dueInDays: 10,
    sets: { shareShort: 0.34 },
  },
];

/** Letters that lie on the desk on the last morning, about packs that went out lately. */
export const COMPLAINTS_OF_THE_MORNING = [
  {
    faultCode: 'wrap-loose',
    text: 'The wrap of the fifth string came loose near the bridge on the second evening.',
  },
  {
    faultCode: 'broke-at-ball',
    text: 'The first string broke at the ball before I had it up to pitch.',
  },
] as const;

/** Why things stand still on the last day, in the words of whoever stopped them. */
export const STANDSTILL = {
  lotOnHold: 'wrap turns when the tail is bent: pull six and look before any is packed',
  lighterThanBooked: 'wound off for practice, and nobody wrote it down',
  spoolInQuarantine: 'rust under the outer turns, asked the maker',
} as const;
