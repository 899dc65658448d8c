import type { MachineWearView } from '../../contract/index.js';
import { wordsIn } from './language.js';

export type WearVerdictWord = MachineWearView['machines'][number]['verdict'];

interface Evidence {
  /** As `0.13 thou`. */
  readonly perHundredDays: string;
  readonly from: string;
  readonly to: string;
  readonly soFar: string;
  readonly days: string;
  readonly isThicker: boolean;
}

interface Left {
  readonly tolerance: string;
  readonly days: number;
  readonly earliest: number;
  readonly latest: number | undefined;
}

const when = (days: number): string => (days === 0 ? 'now' : `in ${days} ${days === 1 ? 'day' : 'days'}`);

/** Whether a machine drifts, in the shop's own records of it. */
export const WEAR_WORDS = wordsIn({
  en: {
    title: 'Wear',
    what: 'what first strings tell of the machines',
    lead: 'By the first string of each run, wound as the sheet says before anybody turned anything, against what is expected of it on this machine. What micrometers read is taken out.',
    verdicts: {
      'too-little': 'Too few months to tell. It takes six, with three runs in each.',
      steady: 'Steady. A drift that would use up half the tolerance in a year can be excluded.',
      unclear: 'No drift is proven, and none that matters can be excluded yet.',
      drifts: 'It drifts. There is time to plan for it.',
      replace: 'This box needs replacing.',
    } satisfies Record<WearVerdictWord, string> as Readonly<Record<WearVerdictWord, string>>,
    replaceServo: 'This drive needs to be looked at.',
    marks: {
      'too-little': 'too little known',
      steady: 'steady',
      unclear: 'unclear',
      drifts: 'drifts',
      replace: 'worn out',
    } satisfies Record<WearVerdictWord, string> as Readonly<Record<WearVerdictWord, string>>,
    evidence: ({ perHundredDays, from, to, soFar, days, isThicker }: Evidence) =>
      `Its strings come out ${perHundredDays} ${isThicker ? 'thicker' : 'thinner'} every hundred days (from ${from} to ${to}, nine times in ten): ${soFar} over the ${days} days seen.`,
    left: ({ tolerance, days, earliest, latest }: Left) =>
      days === 0
        ? `The tolerance of ± ${tolerance} is used up.`
        : `At that rate the tolerance of ± ${tolerance} is used up ${when(days)}; at the earliest ${when(earliest)}${latest === undefined ? '' : `, at the latest ${when(latest)}`}.`,
    noTrend: (from: string, to: string) =>
      `If there is a drift, it lies between ${from} and ${to} every hundred days (nine times in ten).`,
    since: (date: string) => `Counted since its gears were measured anew, ${date}.`,
    method:
      'Trend: Kendall’s test at 1 in 100. Rate: median of pairwise slopes with its interval (Sen 1968). Months of three runs and more.',
    rateName: 'the drift',
    rateWhat: 'By how much first strings of a run come out thicker, as time goes by.',
    rateFormula: 'b = median (yⱼ − yᵢ) / (tⱼ − tᵢ)',
    inputs: { months: 'months', runs: 'runs', z: 'Kendall’s statistic, in standard deviations' },
    rateSource: (runs: string) => `${runs} first strings of this shop (Sen 1968; Kendall 1970).`,
    instruments: (lines: readonly string[]) => `Taken out: ${lines.join('; ')}.`,
    instrument: (name: string, by: string, isMore: boolean, date: string) =>
      `${name} reads ${by} ${isMore ? 'more' : 'less'} since about ${date}, as the others tell`,
    months: 'Month by month',
    pictureName: (machine: string, months: number) =>
      `${machine}: how far first strings came out from what was expected, in ${months} months.`,
    axisUp: (unit: 'in' | 'mm') => `↑ measured less expected, ${unit === 'in' ? 'thou' : 'µm'}`,
    tolerance: 'tolerance from where it began',
    columns: { month: 'About', off: 'Off by', u: 'Known to', runs: 'Runs' },
    summary: (machine: string) => `${machine}: this box needs replacing.`,
    summaryServo: (machine: string) => `${machine}: this drive needs to be looked at.`,
    summaryDrifts: (machine: string) => `${machine} drifts.`,
    summaryMore: 'Open the machine to see by how much.',
    against: (dials: string) =>
      `Against the others stand the rows at ${dials}: misread or miscounted, it may be. Measure them again.`,
  },
});
