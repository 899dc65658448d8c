import type { OfferedCore, OfferedWrap } from '../../../core/recipes/index.js';
import type { WireRecord } from './recipe-draft.js';

/** The wires of the shop as the search for recipes takes them; they go by their names, which are their own. */
export const coresOffered = (wires: Iterable<WireRecord>): readonly OfferedCore[] =>
  [...wires].flatMap(({ body }) => {
    const { name, use, shape, sizeM, alloy, strengthTable, certifiedStrengthPa, priceMinorPerKg } = body;
    if (use !== 'core' || strengthTable === undefined) return [];
    const certified = certifiedStrengthPa === undefined ? {} : { certifiedStrengthPa };
    return [{ wireId: name, shape, sizeM, alloy, strengthTable, priceMinorPerKg, ...certified }];
  });

export const wrapsOffered = (wires: Iterable<WireRecord>): readonly OfferedWrap[] =>
  [...wires].flatMap(({ body: { name, use, sizeM, alloy, priceMinorPerKg } }) =>
    use === 'wrap' ? [{ wireId: name, wireDiameterM: sizeM, alloy, priceMinorPerKg }] : [],
  );
