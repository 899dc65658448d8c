import type { Chance } from '../../../foundation/index.js';
import type { AlloyId } from '../../../materials/index.js';
import { coreSize, type WoundConstruction, wrapSize } from '../../../string/index.js';
import { metresFromThou } from '../../../units/index.js';
import type { WireUsed } from '../measured-string.js';

export interface SyntheticRecipe {
  readonly id: string;
  readonly construction: WoundConstruction;
  /** Its wires in place of lots. */
  readonly wires: readonly WireUsed[];
}

const ALLOYS: readonly AlloyId[] = ['nickel-plated-steel', 'pure-nickel', 'phosphor-bronze'];

/** A recipe of one layer on a core of 12 to 24, four in five of them hexagons. */
export function drawnRecipe(chance: Chance, at: number): SyntheticRecipe {
  const shape = chance.next() < 0.8 ? 'hex' : 'round';
  const coreThou = chance.whole(12, 24);
  const wrapThou = chance.whole(5, 20);
  const alloy = chance.pick(ALLOYS);
  const construction: WoundConstruction = {
    kind: 'wound',
    core: { shape, sizeM: metresFromThou(coreThou), alloy: 'music-wire', strengthTable: 'astm-a228' },
    layers: [{ wireDiameterM: metresFromThou(wrapThou), alloy, gap: 0 }],
  };
  return {
    id: `recipe ${at}`,
    construction,
    wires: [
      { lot: `${shape} ${coreThou}`, sizeUM: coreSize(construction.core).u },
      { lot: `${alloy} ${wrapThou}`, sizeUM: wrapSize(metresFromThou(wrapThou)).u },
    ],
  };
}
