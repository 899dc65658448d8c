import { Compile } from 'typebox/compile';
import { ShopSchema } from '../contract/index.js';
import { type Shop, type ShopFlaw, shopFlaws } from '../core/day/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import { type ShapeError, shapeErrors } from './shape-errors.js';

export type ShopFault =
  | { readonly code: 'shop.not-json'; readonly because: string }
  | { readonly code: 'shop.wrong-shape'; readonly errors: readonly ShapeError[] }
  | { readonly code: 'shop.flawed'; readonly flaws: readonly ShopFlaw[] };

/** Reads a shop file: JSON of the published schema, without flaws. */
export function loadShop(text: string): Result<Shop, ShopFault> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const validator = Compile(ShopSchema);
  if (!validator.Check(parsed.value)) {
    return fail({ code: 'shop.wrong-shape', errors: shapeErrors(validator.Errors(parsed.value)) });
  }
  const shop = parsed.value as Shop;
  const flaws = shopFlaws(shop);
  return flaws.length > 0 ? fail({ code: 'shop.flawed', flaws }) : succeed(shop);
}

function parseJson(text: string): Result<unknown, ShopFault> {
  try {
    return succeed(JSON.parse(text));
  } catch (thrown) {
    return fail({ code: 'shop.not-json', because: (thrown as Error).message });
  }
}
