import { type CalendarDate, type Chance, daysBetween } from '../../src/core/foundation/index.js';
import { normal } from './normal.js';

export interface DryRoomClimate {
  readonly room: string;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
}

const MIDSUMMER = '2026-07-21' as CalendarDate;

/** Days on which the dryer stood still in a warm, wet summer; strings that lay there then went out until some weeks later. Invented. */
export const DAMP_SPELL = {
  from: '2026-07-14' as CalendarDate,
  to: '2026-07-16' as CalendarDate,
  addsHumidity: 0.2,
  sentUntil: '2026-08-31' as CalendarDate,
};

/** A day without heating. Invented. */
const COLD_DAY = { date: '2027-01-20' as CalendarDate, colderByC: 7 };

/** The climate of the invented store room: drier in winter, damper in summer, warmer in the afternoon. */
export function dryRoomClimate(date: CalendarDate, isAfternoon: boolean, chance: Chance): DryRoomClimate {
  const summer = Math.cos((2 * Math.PI * daysBetween(MIDSUMMER, date)) / 365.25);
  const isDamp = date >= DAMP_SPELL.from && date <= DAMP_SPELL.to;
  const heating = date === COLD_DAY.date ? -COLD_DAY.colderByC : 0;
  const temperatureC = 20.5 + 2 * summer + (isAfternoon ? 0.8 : 0) + heating + normal(chance, 0.4);
  const relativeHumidity =
    0.4 + 0.06 * summer + (isDamp ? DAMP_SPELL.addsHumidity : 0) + normal(chance, 0.02);
  return {
    room: 'dry room',
    temperatureC: Math.round(temperatureC * 10) / 10,
    relativeHumidity: Math.round(relativeHumidity * 1000) / 1000,
  };
}
