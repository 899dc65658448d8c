import type { CalendarDate, Chance } from '../../src/core/foundation/index.js';
import { tensileStrength } from '../../src/core/materials/index.js';
import type { Wire } from '../../src/core/stock/index.js';
import type { PlantedCauses } from './causes.js';

/** A spool as the carrier brings it. */
export interface SpoolDelivered {
  readonly wire: string;
  readonly name: string;
  readonly lot: string;
  readonly netKg: number;
  readonly tareKg: number;
  readonly certificate: {
    readonly number: string;
    readonly diameterM: number;
    readonly tensilePa?: number;
  };
}

export interface DeliveryWish {
  readonly date: CalendarDate;
  readonly wires: readonly Wire[];
  /** Which wires are wanted, those that run short first. */
  readonly wanted: readonly string[];
  /** Counts spools and lots through. */
  readonly number: () => number;
}

const SPOOL_KG = { core: 5, wrap: 4 } as const;
const TARE_KG = 0.4;

/** What comes in on a day: the wires wanted, and on its day the lot that is not what its certificate says. */
export function delivery(
  { date, wires, wanted, number }: DeliveryWish,
  { badLot }: PlantedCauses,
  chance: Chance,
): readonly SpoolDelivered[] {
  const spool = (wire: Wire, lot: string, netKg: number): SpoolDelivered => {
    const at = number();
    const tensilePa = tensilePaOf(wire, chance);
    return {
      wire: wire.id,
      name: `${wire.id} / D${at}`,
      lot,
      netKg,
      tareKg: TARE_KG,
      certificate: {
        number: `certificate ${7000 + at}`,
        diameterM: Number((wire.sizeM * (1 + 0.001 * (chance.next() - 0.5))).toFixed(8)),
        ...(tensilePa === undefined ? {} : { tensilePa }),
      },
    };
  };
  const ordinary = wires
    .filter(({ id }) => wanted.includes(id))
    .map((wire) =>
      spool(wire, `wire lot ${chance.whole(600, 990)}`, SPOOL_KG[wire.use] + chance.whole(-40, 60) / 1000),
    );
  const planted = wires
    .filter(({ id }) => id === badLot.wire && date === badLot.arrives)
    .flatMap((wire) => Array.from({ length: badLot.spools }, () => spool(wire, badLot.lot, badLot.netKg)));
  return [...ordinary, ...planted];
}

/** A maker's certificate lies somewhat above the standard's least strength. */
function tensilePaOf({ strengthTable, sizeM }: Wire, chance: Chance): number | undefined {
  if (strengthTable === undefined) return undefined;
  const strength = tensileStrength({ table: strengthTable, diameterM: sizeM, reading: 'conservative' });
  if (!strength.ok) return undefined;
  return Math.round((strength.value.minimumPa * (1.02 + 0.05 * chance.next())) / 1e6) * 1e6;
}
