import type { BodyOf } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { WireRecord } from '../stock/spool-book.js';

/** A place in the construction, and the wire named for it. */
interface Place {
  readonly piece: 'core' | 'wrap-1' | 'wrap-2';
  readonly wireId: string;
  readonly sizeM: number;
  readonly alloy: string;
  readonly shape: 'round' | 'hex';
}

/** A wire's size and the recipe's are the same number, but for how it was written. */
const SIZE_ROUNDING = 1e-6;

/** Refuses a recipe that names other wires than its construction is made of. */
export async function refuseOtherWire(
  tx: Pick<ReadTransaction, 'records'>,
  recipe: BodyOf<'recipe'>,
): Promise<void> {
  for (const place of placesOf(recipe)) {
    const wire = await needRecord(tx, 'wire', place.wireId);
    if (fits(wire, place)) continue;
    const { piece, sizeM, alloy, shape } = place;
    refuse({
      code: 'recipe.other-wire',
      recipeName: recipe.name,
      piece,
      wireId: wire.id,
      wireName: wire.body.name,
      wanted: { sizeM, alloy, shape },
    });
  }
}

function placesOf({ name, construction, coreWireId, wrapWireIds }: BodyOf<'recipe'>): readonly Place[] {
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const layers = construction.kind === 'plain' ? [] : construction.layers;
  if (layers.length !== wrapWireIds.length) {
    refuse({
      code: 'recipe.wraps-missing',
      recipeName: name,
      layers: layers.length,
      wires: wrapWireIds.length,
    });
  }
  return [
    { piece: 'core', wireId: coreWireId, ...core },
    ...layers.map(
      ({ wireDiameterM, alloy }, index): Place => ({
        piece: index === 0 ? 'wrap-1' : 'wrap-2',
        wireId: wrapWireIds[index] ?? '',
        sizeM: wireDiameterM,
        alloy,
        shape: 'round',
      }),
    ),
  ];
}

const fits = ({ body }: WireRecord, { sizeM, alloy, shape }: Place): boolean =>
  body.alloy === alloy && body.shape === shape && Math.abs(body.sizeM - sizeM) <= SIZE_ROUNDING * sizeM;
