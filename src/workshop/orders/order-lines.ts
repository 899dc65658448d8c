import type { BodyOf } from '../../contract/index.js';
import { type CalendarDate, calendarDate, invariant } from '../../core/foundation/index.js';
import type { OrderLine, ResolvedOrder, WantedSet } from '../../core/orders/index.js';
import { refuse } from '../refusal.js';
import type { ShopBook } from '../shop/shop-book.js';

/** A line of an order as it is kept: strings, each with the recipe's record. */
export type KeptLine = BodyOf<'order'>['lines'][number];

/** A line that the core resolved, as an order keeps it. */
export const keptLine = (
  { quantity, kind, setName, strings }: Pick<ResolvedOrder, 'quantity' | 'kind' | 'setName' | 'strings'>,
  lineNumber: number,
  book: ShopBook,
): KeptLine => ({
  lineNumber,
  kind,
  setName,
  quantity,
  strings: keptStrings(strings, book),
});

/** Strings with their recipes' records in place of their names. */
export const keptStrings = (strings: ResolvedOrder['strings'], { records }: ShopBook): KeptLine['strings'] =>
  strings.map(({ position, spec, stringKey, recipeId }) => {
    const recipe = records.recipe.byName.get(recipeId);
    invariant(recipe, 'the core resolves to recipes of the shop that it was given');
    return { position, spec, stringKey, recipeId: recipe.id };
  });

/** What is wanted, as a line that the core can resolve. */
export const lineToResolve = (
  place: Pick<OrderLine, 'line' | 'orderId' | 'player' | 'due' | 'note'>,
  { quantity, wanted }: { readonly quantity: number; readonly wanted: WantedSet },
): OrderLine => ({ ...place, quantity, wanted });

/** The day that a text names; refuses one that is not in the calendar. */
export const needDay = (text: string): CalendarDate =>
  calendarDate(text) ?? refuse({ code: 'date.impossible', read: text });
