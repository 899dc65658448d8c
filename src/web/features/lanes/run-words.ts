import {
  clockInWords,
  counted,
  dateInWords,
  durationInWords,
  placementInWords,
  stringKeyInWords,
} from '../../../contract/index.js';
import type { Day, DayRun } from '../../../core/day/index.js';

/** A run in words, in parts that a page puts where it likes. */
export interface RunWords {
  readonly string: string;
  readonly quantity: string;
  readonly times: string;
  readonly promised: string;
  readonly why: string;
}

/** What a person asks of a run: what, how many, when, for whom by when, and why there. */
export function runWords(run: DayRun, day: Day): RunWords {
  const { short, material } = stringKeyInWords(run.stringKey);
  const scrap = Math.ceil(run.scrapStrings);
  const clock = (time: DayRun['to']) => clockInWords(time, day.date);
  const setUp =
    run.setUpMinutes > 0
      ? `set up ${clock(run.setUpFrom)} (${durationInWords(run.setUpMinutes)}), `
      : 'no set-up, ';
  return {
    string: [short, material].filter(Boolean).join(', '),
    quantity: `${counted(run.quantity, 'good string')}${scrap > 0 ? ` and about ${scrap} as scrap` : ''}`,
    times: `${setUp}run ${clock(run.runFrom)} to ${clock(run.to)}`,
    promised: promisedInWords(run, day),
    why: placementInWords(run.reason),
  };
}

function promisedInWords(run: DayRun, day: Day): string {
  const lot = day.lots.find(({ id }) => id === run.lotId);
  if (!lot || lot.orderLines.length === 0) return 'promised to nobody, fills a bin';
  const late = run.lateMinutes > 0 ? `, ${durationInWords(run.lateMinutes)} of work late` : '';
  return `for ${counted(lot.orderLines.length, 'order')}, the first due ${dateInWords(lot.due)}${late}`;
}

/** All of it as one sentence, for those who hear the picture. */
export function runSentence(run: DayRun, day: Day): string {
  const { string, quantity, times, promised, why } = runWords(run, day);
  return `${run.lotId}: ${string}; ${quantity}; ${times}; ${promised}. ${why}`;
}
