import type { Stretch } from './spoken-for.js';

/**
 * Above this steel rusts measurably, given a trace of dirt or acid in the air. W. H. J. Vernon, A laboratory study of the
 * atmospheric corrosion of metals, Trans. Faraday Soc. 31 (1935) 1668, as told by R. A. Francis, Humidity and dew point:
 * their effect on corrosion and coatings (fig. 1); the paper itself was not read. Those who cite him give 60 to 65 %, for
 * clean air 80 % and more; the lowest is taken here.
 */
export const CRITICAL_HUMIDITY = 0.6;

/**
 * Metal counts as wet: above 80 % and above freezing, ISO 9223:1992 (in 9223:2012 as information), as told by P. Norberg,
 * Surface moisture and time of wetness measurements, ACS Symposium Series 805 (2002) 23. The standard itself was not read.
 */
export const WET_HUMIDITY = 0.8;
export const FREEZING_C = 0;

/**
 * Hours of wetness in a year at which a category begins, the first at 0. ISO 9223:1992 as tabled by P. R. Roberge, Corrosion
 * Engineering: Principles and Practice (2008) 363, the first three of them read there: under 10 h a room with climatic
 * control, 10 to 250 h one without, above that outdoors. The last two are from memory.
 */
export const WETNESS_FROM_HOURS_A_YEAR = [0, 10, 250, 2500, 5500] as const;

export interface CorrosionRisk {
  /** Hours of which the air is known. */
  readonly knownHours: number;
  /** Hours in which it was damp enough to rust, the wet ones among them. */
  readonly criticalHours: number;
  /** Hours in which metal counts as wet. */
  readonly wetHours: number;
  /** What the wet hours come to in a year, if what is not known went as what is; undefined where nothing is known. */
  readonly wetHoursAYear: number | undefined;
  /** 1 to 5, of the standard; undefined where less than a month is known, which says nothing of a year. */
  readonly wetness: number | undefined;
  /** `dry`: no hour was damp enough; `damp`: some were; `wet`: some were wet; `unknown`: nothing was read. */
  readonly verdict: 'unknown' | 'dry' | 'damp' | 'wet';
}

const HOUR_MS = 3_600_000;
const HOURS_A_YEAR = 8766;
const LEAST_KNOWN_HOURS = 30 * 24;

/**
 * What the air of a room meant for bright steel: hours at or above the critical humidity, and hours of wetness, RH > 80 % at
 * T > 0 °C. It speaks of air alone: sweat on a string, salt or acid packaging rust it in drier air too.
 */
export function corrosionRisk(stretches: readonly Stretch[]): CorrosionRisk {
  const hoursOf = (counts: (stretch: Stretch) => boolean): number =>
    stretches.reduce((sum, each) => sum + (counts(each) ? (each.toMs - each.fromMs) / HOUR_MS : 0), 0);
  const knownHours = hoursOf(() => true);
  const criticalHours = hoursOf(({ relativeHumidity }) => relativeHumidity >= CRITICAL_HUMIDITY);
  const wetHours = hoursOf(isWet);
  const wetHoursAYear = knownHours === 0 ? undefined : (wetHours / knownHours) * HOURS_A_YEAR;
  return {
    knownHours,
    criticalHours,
    wetHours,
    wetHoursAYear,
    wetness:
      wetHoursAYear === undefined || knownHours < LEAST_KNOWN_HOURS ? undefined : wetnessOf(wetHoursAYear),
    verdict: knownHours === 0 ? 'unknown' : wetHours > 0 ? 'wet' : criticalHours > 0 ? 'damp' : 'dry',
  };
}

/** Whether metal counts as wet in such air. */
export const isWet = ({
  relativeHumidity,
  temperatureC,
}: {
  readonly relativeHumidity: number;
  readonly temperatureC: number;
}): boolean => relativeHumidity > WET_HUMIDITY && temperatureC > FREEZING_C;

/** Category of wetness, 1 to 5, for so many hours of it in a year. A limit belongs to the lower category. */
export const wetnessOf = (hoursAYear: number): number =>
  Math.max(1, WETNESS_FROM_HOURS_A_YEAR.filter((from) => hoursAYear > from).length);
