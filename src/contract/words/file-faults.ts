import type { ShopFlaw } from '../../core/day/index.js';
import type { FaultWords } from './order-faults.js';
import { shopFlawInWords } from './shop-flaws.js';

/** Why a file is no table of text. */
export type TableFault =
  | { readonly code: 'file.empty' }
  | { readonly code: 'file.is-workbook' }
  | { readonly code: 'file.not-text'; readonly line: number };

/** Why a table is no file of orders. */
export type OrdersFileFault =
  | TableFault
  | { readonly code: 'file.no-known-headings'; readonly headings: readonly string[] };

/** Why a file is no shop that can be worked with. */
export type ShopFault =
  | { readonly code: 'shop.not-json'; readonly because: string }
  | {
      readonly code: 'shop.wrong-shape';
      readonly errors: readonly { readonly path: string; readonly message: string }[];
    }
  | { readonly code: 'shop.flawed'; readonly flaws: readonly ShopFlaw[] };

/** What can be wrong with a file as a whole, as data. */
export type FileFault =
  | { readonly code: 'file.missing'; readonly because: string }
  | OrdersFileFault
  | ShopFault;

const MOST_SHOWN = 8;

/** Says what is wrong with a file and how to mend it. */
export function fileFaultWords(fault: FileFault): FaultWords {
  switch (fault.code) {
    case 'file.missing':
      return {
        what: `The file cannot be opened: ${fault.because}.`,
        mend: 'Check its name and that you may read it.',
      };
    case 'file.empty':
      return { what: 'The file holds nothing.', mend: 'Write a line of headings and one line an order.' };
    case 'file.is-workbook':
      return {
        what: 'The file is a workbook, not a table of text.',
        mend: 'Save the sheet as CSV (UTF-8) and give that file.',
      };
    case 'file.not-text':
      return {
        what: `Line ${fault.line} holds letters that are not UTF-8.`,
        mend: 'Save the file as CSV in UTF-8 and try again.',
      };
    case 'file.no-known-headings':
      return {
        what: `None of the headings is known: ${fault.headings.join(', ')}.`,
        mend: 'The first line must name the columns: order, player, quantity, due, and set, gauges or tuning.',
      };
    case 'shop.not-json':
      return { what: `The shop file is not JSON: ${fault.because}.`, mend: 'Mend the place named.' };
    case 'shop.wrong-shape':
      return {
        what: `The shop file does not have the form of a shop: ${shown(fault.errors.map(({ path, message }) => `${path} ${message}`))}.`,
        mend: 'Compare with the published schema and the demo workshop.',
      };
    case 'shop.flawed':
      return {
        what: `The shop file contradicts itself: ${shown(fault.flaws.map(shopFlawInWords))}.`,
        mend: 'Mend what is named.',
      };
  }
}

const shown = (items: readonly string[]): string =>
  items.length <= MOST_SHOWN
    ? items.join('; ')
    : `${items.slice(0, MOST_SHOWN).join('; ')}; and ${items.length - MOST_SHOWN} more`;
