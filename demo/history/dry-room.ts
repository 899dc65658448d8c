import { type CalendarDate, type Chance, daysBetween } from '../../src/core/foundation/index.js';
import { normal } from './normal.js';

export interface DryRoomClimate {
  readonly room: string;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
}

const MIDSUMMER = '2026-07-21' as CalendarDate;

/** The climate of the invented store room: drier in winter, damper in summer, warmer in the afternoon. */
export function dryRoomClimate(date: CalendarDate, isAfternoon: boolean, chance: Chance): DryRoomClimate {
  const summer = Math.cos((2 * Math.PI * daysBetween(MIDSUMMER, date)) / 365.25);
  const temperatureC = 20.5 + 2 * summer + (isAfternoon ? 0.8 : 0) + normal(chance, 0.4);
  const relativeHumidity = 0.4 + 0.06 * summer + normal(chance, 0.02);
  return {
    room: 'dry room',
    temperatureC: Math.round(temperatureC * 10) / 10,
    relativeHumidity: Math.round(relativeHumidity * 1000) / 1000,
  };
}
