import { useMemo } from 'react';
import type { CalendarDate } from '../../core/foundation/index.js';
import {
  formatForce,
  inchesFromMetres,
  millimetresFromMetres,
  thouFromMetres,
} from '../../core/units/index.js';
import { useSight } from './sight.js';

/** Figures in words, in the units and by the customs that the person has chosen. Every room shows its figures through these. */
export interface Figures {
  /** A pull, its unit beside it. */
  readonly pull: (forceN: number) => string;
  /** A scale, a core length: inches to three places at most (27 in, 25.5 in), or millimetres to one. */
  readonly length: (lengthM: number) => string;
  /** A diameter or a gauge: thousandths of an inch as `0.0105 in`, or millimetres to three places. */
  readonly diameter: (diameterM: number) => string;
  /** What a diameter stands off by: hundredths of a thousandth of an inch, or micrometres to one place; finer by so many places. */
  readonly slight: (lengthM: number, finer?: number) => string;
  /** Wire by weight. */
  readonly weight: (massKg: number) => string;
  /** Wire by length, whole metres. */
  readonly metres: (lengthM: number) => string;
  /** In which of the two the person sees small sizes. */
  readonly lengthUnit: 'in' | 'mm';
  /** What a metre of string weighs. */
  readonly unitWeight: (linearDensityKgPerM: number) => string;
  /** A stress or a strength. */
  readonly stress: (stressPa: number) => string;
  readonly number: (value: number, decimals?: number) => string;
  readonly share: (share: number) => string;
  readonly date: (date: CalendarDate | string) => string;
  /** Day and time of a moment, by this computer's time zone. */
  readonly moment: (instant: string) => string;
  readonly time: (instant: string) => string;
}

export function useFigures(): Figures {
  const { sight } = useSight();
  return useMemo(() => figuresFor(sight), [sight]);
}

export function figuresFor({ pull, length, locale }: ReturnType<typeof useSight>['sight']): Figures {
  const customs = knownLocale(locale);
  const numberForms = new Map<number, Intl.NumberFormat>();
  /** Making one takes longer than using it a hundred times. */
  const numberForm = (decimals: number) => {
    const known = numberForms.get(decimals);
    if (known) return known;
    const made = new Intl.NumberFormat(customs, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
    });
    numberForms.set(decimals, made);
    return made;
  };
  /** A measure that is told to the inch is not shown to the thousandth. */
  const lengthForms = new Map<number, Intl.NumberFormat>();
  const lengthForm = (decimals: number) => {
    const made =
      lengthForms.get(decimals) ?? new Intl.NumberFormat(customs, { maximumFractionDigits: decimals });
    lengthForms.set(decimals, made);
    return made;
  };
  const shareForm = new Intl.NumberFormat(customs, { style: 'percent', maximumFractionDigits: 0 });
  const number = (value: number, decimals = 0) => numberForm(decimals).format(value);
  const inTime = (options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(customs, options);
  const day = { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' } as const;
  const clock = { hour: '2-digit', minute: '2-digit' } as const;
  return {
    pull: (forceN) => formatForce(forceN, pull),
    length: (lengthM) =>
      length === 'in'
        ? `${lengthForm(3).format(inchesFromMetres(lengthM))} in`
        : `${lengthForm(1).format(millimetresFromMetres(lengthM))} mm`,
    diameter: (diameterM) =>
      length === 'in'
        ? `${number(thouFromMetres(diameterM) / 1000, 4)} in`
        : `${number(millimetresFromMetres(diameterM), 3)} mm`,
    slight: (lengthM, finer = 0) =>
      length === 'in'
        ? `${number(thouFromMetres(lengthM), 2 + finer)} thou`
        : `${number(lengthM * 1e6, 1 + finer)} µm`,
    weight: (massKg) => (Math.abs(massKg) < 1 ? `${number(massKg * 1000, 0)} g` : `${number(massKg, 2)} kg`),
    metres: (lengthM) => `${number(lengthM)} m`,
    lengthUnit: length,
    unitWeight: (linearDensityKgPerM) => `${number(linearDensityKgPerM * 1000, 4)} g/m`,
    stress: (stressPa) => `${number(stressPa / 1e6)} MPa`,
    number,
    share: (share) => shareForm.format(share),
    // A day of the calendar has no time zone: it is read and shown as one of Greenwich.
    date: (date) => inTime({ ...day, timeZone: 'UTC' }).format(new Date(`${date}T00:00:00Z`)),
    moment: (instant) => inTime({ ...day, ...clock }).format(new Date(instant)),
    time: (instant) => inTime(clock).format(new Date(instant)),
  };
}

/** A locale that the browser does not know must not take the page down. */
function knownLocale(locale: string): string | undefined {
  try {
    return locale === '' ? undefined : Intl.getCanonicalLocales(locale)[0];
  } catch {
    return undefined;
  }
}
