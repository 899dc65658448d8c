import { grouped } from '../foundation/index.js';
import type { Entry, Movement, Unit } from './ledger.js';

/** What makes a movement none. A builder of movements never gives one of these; what comes from a file may. */
export interface LedgerFault {
  readonly code:
    | 'ledger.nothing-moved'
    | 'ledger.without-reason'
    | 'ledger.unknown-account'
    | 'ledger.unknown-item'
    | 'ledger.other-unit'
    | 'ledger.not-whole'
    | 'ledger.beyond-limit'
    | 'ledger.zero-entry'
    | 'ledger.unbalanced'
    | 'ledger.weight-without-length'
    | 'ledger.length-without-weight';
  /** The account or item that it is about; what the movement is called where it is about all of it. */
  readonly about: string;
  /** What was read there, or by how much the sum is off. */
  readonly read: string | number;
}

/**
 * A movement of less wire than this may round to no length at all; any heavier one has its length with it.
 * 0.1 g is less than a shop's scale shows, and more than a millimetre of any wire for guitar strings weighs.
 */
const MG_WITHOUT_LENGTH = 100;

/** No movement of a workshop is larger: a thousand tonnes, a million kilometres. Sums stay far within exact numbers. */
const MOST_AT_ONCE = 1e12;

/**
 * The first law that a movement breaks, or nothing. The laws: something moves; corrections and counts say
 * why; accounts and items have a known form; an item has its own units; quantities are whole numbers other
 * than 0; per item, lot and unit the entries sum to zero; wire goes by weight and by length at once.
 */
export function movementFault(movement: Movement): LedgerFault | undefined {
  const { what, entries } = movement;
  if (entries.length === 0) return { code: 'ledger.nothing-moved', about: what, read: 0 };
  if (NEED_REASON.includes(what) && movement.reason.trim() === '')
    return { code: 'ledger.without-reason', about: what, read: movement.reason };
  return (
    first(entries, entryFault) ?? first(sameThings(entries), sumFault) ?? first(wires(entries), wireFault)
  );
}

/** Whether an account holds real things, of which there cannot be fewer than none. The others are sources and drains. */
export const mustNotGoBelowZero = (account: string): boolean =>
  GUARDED.some((form) => account.startsWith(form));

/** Whether a name has one of the forms of an account. */
export const isAccount = (name: string): boolean =>
  ALONE.includes(name) || WITH_ID.some((form) => name.startsWith(form) && name.length > form.length);

/** Whether a name has one of the forms of an item. */
export const isItem = (name: string): boolean =>
  ITEMS.some((form) => name.startsWith(form) && name.length > form.length);

/** The unit that an item is counted in first: wire by weight, all else by the piece. */
export const mainUnit = (item: string): Unit => (item.startsWith('wire/') ? 'mg' : 'pieces');

const GUARDED = ['spool/', 'run/', 'bin/', 'order/', 'pack/'];
const WITH_ID = [...GUARDED, 'scrap/', 'count-difference/'];
const ALONE = ['supplier', 'customer', 'made', 'wound-in'];
const ITEMS = ['wire/', 'string/', 'set/', 'end/', 'pack/'];
const NEED_REASON = ['correct', 'count'];

function entryFault({ account, item, unit, quantity }: Entry): LedgerFault | undefined {
  if (!isAccount(account)) return { code: 'ledger.unknown-account', about: account, read: account };
  if (!isItem(item)) return { code: 'ledger.unknown-item', about: item, read: item };
  if (!unitsOf(item).includes(unit)) return { code: 'ledger.other-unit', about: item, read: unit };
  if (!Number.isSafeInteger(quantity)) return { code: 'ledger.not-whole', about: account, read: quantity };
  if (Math.abs(quantity) > MOST_AT_ONCE)
    return { code: 'ledger.beyond-limit', about: account, read: quantity };
  if (quantity === 0) return { code: 'ledger.zero-entry', about: account, read: quantity };
  return undefined;
}

const unitsOf = (item: string): readonly string[] => (item.startsWith('wire/') ? ['mg', 'mm'] : ['pieces']);

const sameThings = (entries: readonly Entry[]) =>
  grouped(entries, ({ item, lot, unit }) => JSON.stringify([item, lot, unit])).values();

function sumFault(entries: readonly Entry[]): LedgerFault | undefined {
  const sum = entries.reduce((total, { quantity }) => total + quantity, 0);
  return sum === 0 ? undefined : { code: 'ledger.unbalanced', about: entries[0]?.item ?? '', read: sum };
}

const wires = (entries: readonly Entry[]) =>
  grouped(
    entries.filter(({ item }) => item.startsWith('wire/')),
    ({ account, item, lot }) => JSON.stringify([account, item, lot]),
  ).values();

/** What one account gets of one wire: both units, in one direction. */
function wireFault(entries: readonly Entry[]): LedgerFault | undefined {
  const about = entries[0]?.account ?? '';
  const sumOf = (unit: Unit) =>
    entries.filter((entry) => entry.unit === unit).reduce((total, { quantity }) => total + quantity, 0);
  const [mg, mm] = [sumOf('mg'), sumOf('mm')];
  if (mm === 0 && Math.abs(mg) >= MG_WITHOUT_LENGTH)
    return { code: 'ledger.weight-without-length', about, read: mg };
  if (mm !== 0 && Math.sign(mm) !== Math.sign(mg))
    return { code: 'ledger.length-without-weight', about, read: mm };
  return undefined;
}

function first<Thing>(
  things: Iterable<Thing>,
  faultOf: (thing: Thing) => LedgerFault | undefined,
): LedgerFault | undefined {
  for (const thing of things) {
    const fault = faultOf(thing);
    if (fault) return fault;
  }
  return undefined;
}
