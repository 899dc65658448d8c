import { Compile } from 'typebox/compile';
import { type ShopFault, ShopSchema } from '../contract/index.js';
import { type Shop, shopFlaws } from '../core/day/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import { shapeErrors } from './shape-errors.js';

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
