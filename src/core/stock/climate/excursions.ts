import { type DryRoomLimits, isDryEnough } from '../dry-room.js';
import type { Stretch } from './spoken-for.js';

/** A time in which the air lay outside its limits, in one piece. */
export interface Excursion {
  readonly fromMs: number;
  readonly toMs: number;
  readonly readings: number;
  /** The worst of each that was read in it. */
  readonly mostHumidity: number;
  readonly leastC: number;
  readonly mostC: number;
  /** Beyond the limit by so much; 0 where it kept to that one. */
  readonly humidityOver: number;
  readonly warmerByC: number;
  readonly colderByC: number;
  /** The air before or after it was not read: it may have begun earlier, or gone on. */
  readonly beginsUnseen: boolean;
  readonly endsUnseen: boolean;
}

/**
 * Where the air left its limits, and for how long, in the order of time. A gap in the readings ends an excursion, since
 * nobody knows how it went on. Where two readings lie on either side of a limit, the change is set half-way between them.
 */
export function excursions(stretches: readonly Stretch[], limits: DryRoomLimits): readonly Excursion[] {
  const found: Stretch[][] = [];
  stretches.forEach((stretch, at) => {
    if (isDryEnough(stretch, limits)) return;
    const before = stretches[at - 1];
    const last = found.at(-1);
    if (last && before && last.at(-1) === before && before.toMs === stretch.fromMs) last.push(stretch);
    else found.push([stretch]);
  });
  return found.map((own) => excursionOf(own, stretches, limits));
}

function excursionOf(
  own: readonly Stretch[],
  stretches: readonly Stretch[],
  limits: DryRoomLimits,
): Excursion {
  const first = own[0]!;
  const last = own.at(-1)!;
  const mostHumidity = greatest(own.map(({ relativeHumidity }) => relativeHumidity));
  const mostC = greatest(own.map(({ temperatureC }) => temperatureC));
  const leastC = -greatest(own.map(({ temperatureC }) => -temperatureC));
  const at = stretches.indexOf(first);
  return {
    fromMs: first.fromMs,
    toMs: last.toMs,
    readings: own.length,
    mostHumidity,
    leastC,
    mostC,
    humidityOver: Math.max(0, mostHumidity - limits.mostHumidity),
    warmerByC: Math.max(0, mostC - limits.mostC),
    colderByC: Math.max(0, limits.leastC - leastC),
    beginsUnseen: stretches[at - 1]?.toMs !== first.fromMs,
    endsUnseen: stretches[at + own.length]?.fromMs !== last.toMs,
  };
}

const greatest = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(value, most), Number.NEGATIVE_INFINITY);
