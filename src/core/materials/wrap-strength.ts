import { fail, type Result, succeed } from '../foundation/index.js';
import type { AlloyId, TemperBand } from './alloy.js';
import { alloy } from './alloys.js';

export type WrapStrengthFault =
  | { readonly code: 'wrap-strength.not-recorded'; readonly alloy: AlloyId; readonly diameterM: number }
  | {
      readonly code: 'wrap-strength.unknown-temper';
      readonly alloy: AlloyId;
      readonly diameterM: number;
      readonly temper: string;
      /** The tempers that are on record for this alloy and size. */
      readonly known: readonly string[];
    };

/**
 * The band of tensile strength to cap the pull on wrap wire with: that of the temper named, else the weakest
 * on record (as a rule the annealed one), since nothing printed says how soft a spool is. Where one temper has
 * several bands for the size, the weaker. The band says in its `form` whether it was printed for wire at all,
 * and in its `standing` whether it was printed.
 */
export function wrapStrength(wire: {
  readonly alloy: AlloyId;
  readonly diameterM: number;
  readonly temper?: string;
}): Result<TemperBand, WrapStrengthFault> {
  const bands = alloy(wire.alloy).tempers.filter((band) => holdsAt(band, wire.diameterM));
  const named = wire.temper === undefined ? bands : bands.filter(({ temper }) => temper === wire.temper);
  const weakest = named.reduce<TemperBand | undefined>(weaker, undefined);
  if (weakest !== undefined) return succeed(weakest);

  const place = { alloy: wire.alloy, diameterM: wire.diameterM };
  if (wire.temper === undefined || bands.length === 0) {
    return fail({ code: 'wrap-strength.not-recorded', ...place });
  }
  const known = [...new Set(bands.map(({ temper }) => temper))];
  return fail({ code: 'wrap-strength.unknown-temper', ...place, temper: wire.temper, known });
}

const holdsAt = (band: TemperBand, diameterM: number): boolean =>
  diameterM > (band.aboveDiameterM ?? 0) && diameterM <= (band.upToDiameterM ?? Number.POSITIVE_INFINITY);

const weaker = (least: TemperBand | undefined, band: TemperBand): TemperBand =>
  least === undefined || band.minimumPa < least.minimumPa ? band : least;
