import { Compile } from 'typebox/compile';
import { ShopSchema } from '../contract/index.js';
import type { Shop } from '../core/day/index.js';
import { type DanglingReference, danglingReferences } from '../core/day/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';

export type ShopFault =
  | { readonly code: 'shop.not-json'; readonly because: string }
  | {
      readonly code: 'shop.wrong-shape';
      readonly errors: readonly { readonly path: string; readonly message: string }[];
    }
  | { readonly code: 'shop.dangling'; readonly references: readonly DanglingReference[] };

/** Reads a shop file: JSON of the published schema, in which everything named exists. */
export function loadShop(text: string): Result<Shop, ShopFault> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const validator = Compile(ShopSchema);
  if (!validator.Check(parsed.value)) {
    const errors = validator
      .Errors(parsed.value)
      .map(({ instancePath, message }) => ({ path: instancePath || '/', message }));
    return fail({ code: 'shop.wrong-shape', errors });
  }
  const shop = parsed.value as Shop;
  const references = danglingReferences(shop);
  return references.length > 0 ? fail({ code: 'shop.dangling', references }) : succeed(shop);
}

function parseJson(text: string): Result<unknown, ShopFault> {
  try {
    return succeed(JSON.parse(text));
  } catch (thrown) {
    return fail({ code: 'shop.not-json', because: (thrown as Error).message });
  }
}
