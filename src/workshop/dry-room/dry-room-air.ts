import type { DryRoomAir, ReadingQuery } from '../../contract/index.js';
import { addDays, type CalendarDate, calendarDate, weekday } from '../../core/foundation/index.js';
import {
  airByPeriod,
  type ClimateReading,
  corrosionRisk,
  excursions,
  type PeriodAir,
  type Span,
  spokenFor,
  thinOut,
} from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock, startOfDayMs } from '../local-clock.js';
import { dryRoomLimits } from './dry-room-limits.js';
import type { RoomReading } from './take-readings.js';

/** Four weeks, where nobody asks for others; and no more than a year with its days of grace. */
const USUAL_DAYS = 28;
const MOST_DAYS = 400;
/** A picture has so many parts, each with its extremes. */
const PARTS = 300;
/** Rooms read in the last so many readings are in use. */
const LOOKED_AT = 200;
const DAY_MS = 24 * 3_600_000;

/** The air of a room over some days of the shop. */
export async function dryRoomAir(
  tx: ReadTransaction,
  asked: ReadingQuery<'dry-room-air'>,
  now: string,
): Promise<DryRoomAir> {
  const days = daysAsked(asked, localClock(now).date);
  const span = { fromMs: startOfDayMs(days[0]!), toMs: Math.min(endMs(days.at(-1)!), Date.parse(now)) };
  const limits = await dryRoomLimits(tx);
  const all = await readingsAbout(tx, span);
  const lately = (await tx.records.between('dry-room-reading', 'at', { last: LOOKED_AT })).map(
    ({ body }) => body,
  );
  const rooms = [...new Set([...lately, ...all].map(({ room }) => room))].sort();
  const room = asked.room ?? lately.at(-1)?.room ?? '';
  const readings = all.filter((reading) => reading.room === room).map(asReading);
  const known = spokenFor(readings, span);
  const own = readings.filter(({ atMs }) => atMs >= span.fromMs && atMs <= span.toMs);
  const periods = (starts: readonly CalendarDate[], length: number) =>
    airByPeriod(
      known,
      starts.map((date) => clipped(date, length, span)),
      limits,
    ).map(shownPeriod);
  return {
    room,
    rooms,
    ...shownSpan(span),
    limits,
    readingCount: own.length,
    readings: thinOut(own, PARTS).map(({ atMs, temperatureC, relativeHumidity }) => ({
      at: instantOf(atMs),
      temperatureC,
      relativeHumidity,
    })),
    usualStepMinutes: known.usualStepMs / 60_000,
    longestSilenceMinutes: known.longestSilenceMs / 60_000,
    excursions: excursions(known.stretches, limits).map(({ fromMs, toMs, ...facts }) => ({
      ...shownSpan({ fromMs, toMs }),
      ...facts,
    })),
    gaps: known.gaps.map(shownSpan),
    days: periods(days, 1),
    weeks: periods([...new Set(days.map(mondayOf))], 7),
    risk: riskOf(known.stretches),
  };
}

function daysAsked({ from, to }: ReadingQuery<'dry-room-air'>, today: CalendarDate): readonly CalendarDate[] {
  const last = earlier((to && calendarDate(to)) || today, today);
  const wanted = (from && calendarDate(from)) || addDays(last, 1 - USUAL_DAYS);
  const first = later(earlier(wanted, last), addDays(last, 1 - MOST_DAYS));
  const days: CalendarDate[] = [];
  for (let day = first; day <= last; day = addDays(day, 1)) days.push(day);
  return days;
}

const earlier = (one: CalendarDate, other: CalendarDate): CalendarDate => (one < other ? one : other);
const later = (one: CalendarDate, other: CalendarDate): CalendarDate => (one > other ? one : other);
const endMs = (date: CalendarDate): number => startOfDayMs(addDays(date, 1));
const instantOf = (ms: number): string => new Date(ms).toISOString();

/** Of a day before and after too: the first and last hours are spoken for by readings beyond them. */
async function readingsAbout(
  { records }: ReadTransaction,
  { fromMs, toMs }: Span,
): Promise<readonly RoomReading[]> {
  const ends = { from: instantOf(fromMs - DAY_MS), to: instantOf(toMs + DAY_MS) };
  return (await records.between('dry-room-reading', 'at', ends)).map(({ body }) => body);
}

const asReading = ({ at, temperatureC, relativeHumidity }: RoomReading): ClimateReading => ({
  atMs: Date.parse(at),
  temperatureC,
  relativeHumidity,
});

const mondayOf = (date: CalendarDate): CalendarDate => addDays(date, -((weekday(date) + 6) % 7));

const clipped = (date: CalendarDate, length: number, span: Span) => ({
  date,
  fromMs: Math.max(span.fromMs, startOfDayMs(date)),
  toMs: Math.max(span.fromMs, Math.min(span.toMs, startOfDayMs(addDays(date, length)))),
});

const shownSpan = ({ fromMs, toMs }: Span) => ({ from: instantOf(fromMs), to: instantOf(toMs) });

const shownPeriod = ({ fromMs, toMs, air, ...hours }: PeriodAir) => ({
  date: localClock(instantOf(fromMs)).date,
  ...shownSpan({ fromMs, toMs }),
  ...hours,
  ...(air ? { air } : {}),
});

function riskOf(stretches: Parameters<typeof corrosionRisk>[0]): DryRoomAir['risk'] {
  const { wetHoursAYear, wetness, ...rest } = corrosionRisk(stretches);
  return {
    ...rest,
    ...(wetHoursAYear === undefined ? {} : { wetHoursAYear }),
    ...(wetness === undefined ? {} : { wetness }),
  };
}
