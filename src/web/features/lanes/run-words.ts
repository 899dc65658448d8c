import {
  clockInWords,
  dateInWords,
  durationInWords,
  placementInWords,
  stringKeyInWords,
} from '../../../contract/index.js';
import type { Day, DayRun } from '../../../core/day/index.js';
import type { PLAN_WORDS } from '../../words/plan.js';

export type PlanWords = (typeof PLAN_WORDS)['en'];

/** A run in words, in parts that a page puts where it likes. */
export interface RunWords {
  readonly string: string;
  readonly quantity: string;
  readonly times: string;
  readonly promised: string;
  readonly why: string;
}

/** What a person asks of a run: what, how many, when, for whom by when, and why there. */
export function runWords(run: DayRun, day: Day, words: PlanWords): RunWords {
  const { short, material } = stringKeyInWords(run.stringKey);
  const clock = (time: DayRun['to']) => clockInWords(time, day.date);
  const setUp =
    run.setUpMinutes > 0
      ? words.setUpFor(clock(run.setUpFrom), durationInWords(run.setUpMinutes))
      : words.noSetUp;
  return {
    string: [short, material].filter(Boolean).join(', '),
    quantity: words.goodStrings(run.quantity, Math.ceil(run.scrapStrings)),
    times: `${setUp}${words.runFromTo(clock(run.runFrom), clock(run.to))}`,
    promised: promisedInWords(run, day, words),
    why: placementInWords(run.reason),
  };
}

function promisedInWords(run: DayRun, day: Day, words: PlanWords): string {
  const lot = day.lots.find(({ id }) => id === run.lotId);
  if (!lot || lot.orderLines.length === 0) return words.toNobody;
  const late = run.lateMinutes > 0 ? words.lateBy(durationInWords(run.lateMinutes)) : '';
  return `${words.forOrders(lot.orderLines.length, dateInWords(lot.due))}${late}`;
}

/** All of it as one sentence, for those who hear the picture. */
export const runSentence = (run: DayRun, day: Day, words: PlanWords): string =>
  words.runSentence(run.lotId, runWords(run, day, words));
