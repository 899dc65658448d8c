import type { Need } from '../../contract/index.js';
import { wordsIn } from './language.js';

type Kind = Need['kind'];

const things = (count: number): string => (count === 1 ? 'one thing needs you' : `${count} things need you`);
const days = (count: number): string => (count === 1 ? 'one day' : `${count} days`);

/** The room that says what needs a person now. */
export const TODAY_WORDS = wordsIn({
  en: {
    title: 'Today',
    what: 'what needs you',
    firstStepsTitle: 'How this shop begins',
    firstStepsLead:
      'Enter these, one after the other; each needs what stands above it. They can all be changed later.',
    firstSteps: {
      rules: ['Rules and rates', 'The shop’s name, lengths, lots, working days and money.'],
      wires: ['Kinds of wire', 'Core and wrap wire that you buy, by size and alloy.'],
      machines: ['Machines', 'What winds and cuts, with what each can do.'],
      recipes: ['Recipes', 'A gauge and a material; the cores and wraps that make it are worked out.'],
      bins: ['Bins', 'Where finished strings lie, in the order in which packers walk.'],
      spools: ['Spools on the shelf', 'Each weighed with its wire, so that the books know what is there.'],
      sets: ['Sets', 'What you sell by name. A shop of custom sets alone needs none.'],
    },
    isThere: 'begun',
    isMissing: 'to do',
    firstStepsElse:
      'Then take in the people who work here, under Shop, and orders can come. Instruments and tunings that players name stand under Shop too.',
    nothing: 'Nothing needs you now.',
    nothingMore:
      'Late orders, runs and lots that stand still, wire that runs low, the dry room, requests and complaints would be here.',
    summary: (all: number, now: number): string => {
      if (now === 0) return `${upper(things(all))}, none of them at once.`;
      return now === all
        ? `${upper(things(all))}, at once.`
        : `${upper(things(all))}, ${now === 1 ? 'one' : now} of them at once.`;
    },
    urgencies: {
      now: 'Now',
      soon: 'Today or tomorrow',
      'in-time': 'When there is time',
    } satisfies Record<Need['urgency'], string>,
    counted: (what: string, count: number) => `${what}: ${count}`,
    kinds: {
      'order-late': 'Orders that are late',
      'order-due': 'Orders that are due',
      'run-paused': 'Runs that stand still',
      'lot-on-hold': 'Lots held back',
      'lot-in-check': 'Lots that wait for a check',
      'wire-low': 'Wire that runs low',
      'dry-room-out': 'Dry room outside its limits',
      'dry-room-silent': 'Dry room not read',
      'request-waiting': 'Requests that wait',
      'complaint-open': 'Complaints',
      'clock-behind': 'The server’s clock',
    } satisfies Record<Kind, string>,
    order: (number: string, player: string) => (player === '' ? number : `${number}, ${player}`),
    late: (by: number, due: string) => `${days(by)} late: it was due ${due}.`,
    due: (left: number, due: string) => `Due ${left === 0 ? 'today' : 'tomorrow'}, ${due}.`,
    orderStates: {
      received: 'Nobody packs it yet.',
      packing: 'It is being packed.',
    } as Readonly<Record<string, string>>,
    run: (name: string, string: string) => `${name}: ${string}`,
    paused: (machine: string, since: string) =>
      machine === '' ? `Paused since ${since}.` : `Paused on ${machine} since ${since}.`,
    lot: (name: string, string: string) => `${name}: ${string}`,
    held: (reason: string, since: string) =>
      reason === '' ? `Held since ${since}.` : `Held since ${since}: ${reason}.`,
    inCheck: (strings: number, since: string) =>
      `${strings === 1 ? 'One string, made' : `${strings} strings, made`} ${since}; nobody may pack them yet.`,
    cover: (days: string) => `lasts ${days} days`,
    empty: 'none is left on the spools',
    coverName: (wire: string) => `cover of ${wire}`,
    coverWhat: 'Days until the spools are empty if use goes on as it was.',
    coverFormula: 'days = on the spools ÷ (used ÷ days looked at)',
    onHand: 'On the spools, those in quarantine left out',
    used: (overDays: number) => `Taken off spools by runs in the last ${days(overDays)}`,
    wanted: 'To be ordered below',
    daysOf: (count: string) => `${count} days`,
    coverSource: {
      shop: 'Use: the shop’s own ledger. Days wanted: the shop’s rule.',
      'common-practice':
        'Use: the shop’s own ledger. Days wanted: common practice, no source; settle your own under Shop.',
    },
    orderWire: (wanted: string) => `Below the ${wanted} days wanted: order it.`,
    climate: (temperature: string, humidity: string) => `${temperature} °C, ${humidity} humidity`,
    climateName: (room: string) => `climate of the ${room}`,
    climateWhat: 'The last reading, beside what the room is held to.',
    temperatureLimits: 'Temperature',
    humidityLimit: 'Relative humidity',
    between: (least: string, most: string) => `${least} to ${most} °C`,
    atMost: (most: string) => `at most ${most}`,
    climateSource: {
      shop: 'Limits: the shop’s rule.',
      'common-practice': 'Limits: common practice, no source; settle your own under Shop.',
    },
    climateSince: (since: string) => `Read ${since}. Mend the dryer, then read again.`,
    aDryRoom: 'Dry room',
    silent: (since: string) => `Last read ${since}: more than a day ago.`,
    neverRead: 'Nobody has ever read it here.',
    waits: (since: string) => `Waits since ${since}.`,
    complaint: (player: string, fault: string) => `${player}: ${fault.replaceAll('-', ' ')}`,
    complained: (since: string) => `Came ${since}.`,
    clock: 'The computer’s clock is behind',
    clockSays: (minutes: string, says: string) =>
      `By ${minutes} min: it says ${says}. What is written bears the last moment known; set the clock right.`,
    answer: 'Answer or close',
    complaintTitle: (player: string) => `Complaint of ${player}`,
    theirWords: 'What they write',
    yourAnswer: 'What you answer them',
    keepAnswer: 'Write the answer down',
    closeIt: 'Close the complaint',
    answered: (player: string) => `The answer to ${player} is written down.`,
    closed: (player: string) => `The complaint of ${player} is closed.`,
  },
});

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
