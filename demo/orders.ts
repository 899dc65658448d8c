import type { Shop } from '../src/core/day/index.js';
import {
  addDays,
  type CalendarDate,
  type Chance,
  seededChance,
  weekday,
} from '../src/core/foundation/index.js';
import { DEMO_SEED } from './workshop.js';

export interface OrdersWish {
  readonly from: CalendarDate;
  readonly days: number;
  readonly count: number;
  readonly seed?: number;
  /** Shares of custom sets and of requests; the rest are stock sets. */
  readonly customShare?: number;
  readonly requestShare?: number;
  /** Number of the first order; the others follow. */
  readonly firstNumber?: number;
  /** How many sets an order of stock sets may be for, each as likely; now and then it is by the dozen where left out. */
  readonly quantities?: readonly number[];
}

const HEADINGS = [
  'order',
  'player',
  'quantity',
  'due',
  'set',
  'gauges',
  'material',
  'instrument',
  'scale',
  'tuning',
  'likes',
  'wishes',
  'note',
] as const;
type Heading = (typeof HEADINGS)[number];
type Row = Partial<Record<Heading, string>>;

/** A file of invented orders, comma separated, headings first: what `tautwork day --orders` reads. */
export function demoOrders(shop: Shop, wish: OrdersWish): string {
  const chance = seededChance(wish.seed ?? DEMO_SEED);
  const { customShare = 0.25, requestShare = 0.08 } = wish;
  const rows = Array.from({ length: wish.count }, (_, at): Row => {
    if (at === IMPOSSIBLE_AT) return impossible(wish, chance, at);
    const draw = chance.next();
    return {
      order: orderNumber(wish, at),
      player: player(chance),
      due: dueDate(wish, chance),
      ...(draw < requestShare
        ? request(chance)
        : draw < requestShare + customShare
          ? customSet(chance)
          : stockSet(shop, chance, wish.quantities)),
      note: chance.next() < 0.06 ? chance.pick(NOTES) : '',
    };
  });
  return `${[HEADINGS.join(','), ...rows.map((row) => HEADINGS.map((heading) => cell(row[heading])).join(','))].join('\n')}\n`;
}

const orderNumber = ({ firstNumber = 4100 }: OrdersWish, at: number): string => `T-${firstNumber + at}`;

/** Where in the file the demo shows what is said of an order that cannot be ready in time. */
const IMPOSSIBLE_AT = 41;

/** A gross of eights by tonight: no shop of this size winds them. */
const impossible = (wish: OrdersWish, chance: Chance, at: number): Row => ({
  order: orderNumber(wish, at),
  player: player(chance),
  due: wish.from,
  quantity: '144',
  set: 'Slate eight, 10',
});

const MATERIALS = ['nickel-plated steel', 'pure nickel', 'phosphor bronze', '80/20 bronze'] as const;

const CUSTOM_GAUGES = [
  '10-13-17-26-36-48',
  '10-13.5-17-28-38-50',
  '11-14-18-28-39-52',
  '10.5-13-17-26-36-46',
  '12-16-20w-32-42-54',
  '9-11-16-26-36-46',
  '11-15-22w-30-40-50',
  '12-16-24w-34-44-56',
  '13-17-26-36-47-60',
  '10-14-18-28-40-58',
  '9.5-12-16-26-36-46-62',
] as const;

const REQUESTS: readonly Row[] = [
  { instrument: 'electric 25.5', tuning: 'open D', likes: 'Meadow six, 10', material: 'nickel-plated steel' },
  {
    instrument: 'baritone 27',
    tuning: 'open B baritone',
    likes: 'Meadow six, 10',
    material: 'nickel-plated steel',
  },
  {
    instrument: 'electric 25.5',
    tuning: 'D A D G A D',
    likes: 'Meadow six, 10',
    material: 'nickel-plated steel',
    wishes: 'heavier bass 5 %',
  },
  {
    instrument: 'electric 24.75',
    tuning: 'half step down',
    likes: 'Meadow six, 10',
    material: 'pure nickel',
  },
  { instrument: 'acoustic 25.4', tuning: 'open G', likes: 'Hazel bronze, 12', material: 'phosphor bronze' },
  {
    scale: '25.5-27 in',
    tuning: 'standard seven',
    likes: 'Slate seven, 10',
    material: 'nickel-plated steel',
  },
  {
    scale: '26-28 in',
    tuning: 'standard eight',
    likes: 'Slate eight, 10',
    material: 'nickel-plated steel',
    wishes: 'even 72 N',
  },
  {
    instrument: 'electric 25.5',
    tuning: 'C G C F A D',
    likes: 'Meadow six, 11',
    material: 'nickel-plated steel',
  },
  {
    instrument: 'acoustic 25.4',
    tuning: 'drop D',
    likes: 'Hazel bronze, 12',
    material: '80/20 bronze',
    wishes: 'lighter treble 5 %',
  },
];

const NOTES = [
  'second bag for the case',
  'gift, no price inside',
  'please post with the strap',
  'will collect',
  'left-handed: no matter',
] as const;

/** Mostly a few sets of a kind; one line in thirty is a shop's order by the dozen. */
const stockSet = (shop: Shop, chance: Chance, quantities?: readonly number[]): Row => ({
  quantity: String(quantities ? chance.pick(quantities) : stockQuantity(chance)),
  set: chance.pick(shop.sets).name,
});

const stockQuantity = (chance: Chance): number =>
  chance.next() < 1 / 30 ? 12 * chance.whole(2, 5) : chance.pick([1, 1, 1, 2, 2, 3, 3, 5, 6, 10]);

const customSet = (chance: Chance): Row => ({
  quantity: String(chance.pick([1, 1, 2, 2, 3])),
  gauges: chance.pick(CUSTOM_GAUGES),
  material: chance.pick(MATERIALS),
});

const request = (chance: Chance): Row => ({
  quantity: String(chance.pick([1, 1, 2])),
  ...chance.pick(REQUESTS),
});

/** Orders fall due on working days, mostly after a few days, some the next morning. */
function dueDate({ from, days }: OrdersWish, chance: Chance): string {
  const notice = chance.next() < 0.06 ? chance.whole(-3, 1) : chance.whole(2, days);
  let date = addDays(from, notice);
  while (weekday(date) > 5) date = addDays(date, 1);
  return date;
}

/** Names put together from syllables, so that they are nobody's. */
function player(chance: Chance): string {
  const given = `${chance.pick(['Ama', 'Bri', 'Cor', 'Del', 'Emi', 'Fen', 'Gwi', 'Hal', 'Ilo', 'Jor'])}${chance.pick(['la', 'nek', 'ris', 'vo', 'min', 'dra', 'sel'])}`;
  const family = `${chance.pick(['Quarrel', 'Thistle', 'Marrow', 'Under', 'Copper', 'Winnow', 'Barley', 'Fallow'])}${chance.pick(['beck', 'croft', 'mere', 'stead', 'holt', 'ley'])}`;
  return `${given} ${family}`;
}

const cell = (text = ''): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
