import type { OrderFault } from '../../core/orders/index.js';
import type { UnableReason } from '../../core/winding/index.js';
import { listInWords } from './lists.js';
import { type FaultWords, orderFaultWords } from './order-faults.js';
import type { WordsOfFault } from './shop-wide-faults.js';
import { wholeStringInWords } from './strings.js';
import { unableInWords } from './unable.js';

/** Refusals about requests, orders, files of orders, plans and complaints. */
export const ORDER_DESK_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'date.impossible': ({ read }) => ({
    what: `There is no day ${read}.`,
    mend: 'Write a day of the calendar: year, month and day, such as 2027-03-05.',
  }),
  'request.unanswerable': ({ faults }) => firstWords(faults),
  'request.set-not-offered': {
    what: 'That set is no longer among the best answers: the shelf or the recipes have changed since it was shown.',
    mend: 'Look at the answers as they stand now, and choose again.',
  },
  'request.without-answer': {
    what: 'The request has no answer yet.',
    mend: 'Answer it first.',
  },
  'request.recipe-retired': ({ position, stringKey }) => ({
    what: `String ${position} of the answer, ${wholeStringInWords(String(stringKey))}, is made by a recipe that is retired now.`,
    mend: 'Answer the request anew, and tell the player.',
  }),
  'order.lines-unresolved': ({ faults }) => {
    const all = faults as readonly OrderFault[];
    const { what, mend } = firstWords(faults);
    const more = all.length > 1 ? ` (${all.length - 1} more are listed with it.)` : '';
    return { what: `Line ${all[0]?.line}: ${what}${more}`, mend };
  },
  'order.under-way': ({ number, state }) => ({
    what: `Order ${number} is ${state}: it can no longer be changed.`,
    mend: 'Cancel what is not yet shipped of it, and enter another order.',
  }),
  'order.packs-hold-strings': ({ packs }) => ({
    what: `Packs of the order hold strings: ${listInWords((packs as readonly { readonly labelCode: string }[]).map(({ labelCode }) => labelCode))}.`,
    mend: 'Lay the strings back or give the packs up first.',
  }),
  'import.headings-missing': ({ missing, headings }) => ({
    what: `The file has no heading ${listInWords((missing as readonly string[]).map((heading) => `“${heading}”`))}.`,
    mend: `Choose from its headings: ${(headings as readonly string[]).join(', ')}.`,
  }),
  'import.has-faults': ({ preview }) => ({
    what: `Nothing of the file was taken: ${(preview as { readonly faults: readonly unknown[] }).faults.length} faults stand in its preview.`,
    mend: 'Mend the lines that are named, and give the file again.',
  }),
  'import.number-taken': ({ facts }) => ({
    what: `An order of that number is there already, ${sourceOf(facts)}.`,
    mend: 'Give the order another number, or leave it out of the file.',
  }),
  'import.order-under-way': ({ facts }) => ({
    what: `The order is ${(facts as { readonly state?: string } | undefined)?.state ?? 'under way'}, and the file would change it.`,
    mend: 'Leave its lines as they were, or cancel the order and use another number.',
  }),
  'import.players-differ': ({ facts }) => ({
    what: `Lines of one order name different players: ${listInWords((facts as { readonly players?: readonly string[] } | undefined)?.players ?? [])}.`,
    mend: 'Give each player an order number of their own.',
  }),
  'rearrange.not-in-force': ({ date }) => ({
    what: `The plan of ${date} is not in force any more: another took its place.`,
    mend: 'Look at the plan that is in force, and move the runs there.',
  }),
  'rearrange.day-over': ({ date }) => ({
    what: `The day ${date} is over.`,
    mend: 'Settle a plan of today or later, and move the runs there.',
  }),
  'rearrange.lots-differ': ({ begun, missing, unknown }) => ({
    what: [
      ...lotsIn(begun, 'was begun or ended meanwhile', 'were begun or ended meanwhile'),
      ...lotsIn(missing, 'is left out', 'are left out'),
      ...lotsIn(unknown, 'does not belong there', 'do not belong there'),
    ].join(' '),
    mend: 'Look at the plan as it stands now, and move the runs again.',
  }),
  'rearrange.machine-not-able': ({ machine, lotId, reasons }) => ({
    what: `${machine} cannot make ${lotId}: it ${listInWords((reasons as readonly UnableReason[]).map(unableInWords))}.`,
    mend: 'Put the lot on a machine that can make it.',
  }),
  'rearrange.recipe-retired': ({ lotId }) => ({
    what: `The recipe of ${lotId} is retired, or its machine is gone.`,
    mend: 'Settle the plan anew.',
  }),
  'complaint.position-not-in-pack': ({ labelCode, position }) => ({
    what: `The pack ${labelCode} holds no string ${position}.`,
    mend: 'Choose one of the strings that were put into it.',
  }),
  'complaint.position-without-pack': {
    what: 'A string is named by its place in a pack, and no pack is named.',
    mend: 'Name the pack, or the lot of the string.',
  },
  'complaint.lot-not-in-pack': ({ labelCode }) => ({
    what: `No string of that lot is in the pack ${labelCode}.`,
    mend: 'Name the lot as the pack has it, or leave one of the two out.',
  }),
};

function firstWords(faults: unknown): FaultWords {
  const [first] = faults as readonly OrderFault[];
  return first
    ? orderFaultWords(first)
    : { what: 'It cannot be made of strings.', mend: 'Ask for something else.' };
}

const lotsIn = (lots: unknown, one: string, several: string): readonly string[] => {
  const named = (lots ?? []) as readonly string[];
  return named.length === 0 ? [] : [`${listInWords(named)} ${named.length === 1 ? one : several}.`];
};

const sourceOf = (facts: unknown): string => {
  const source = (facts as { readonly source?: string } | undefined)?.source;
  return source ? `from ${source}` : 'entered by hand';
};
