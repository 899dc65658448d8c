import { describe, expect, it } from 'vitest';
import { canReadText, misplacedWords, runningText } from '../../test/fixtures/read-pdf.js';
import { smallDay } from '../../test/fixtures/small-day.js';
import { dayPlanPdf } from './day-plan.js';

const day = smallDay();

describe('the day plan', () => {
  it('equal days give equal bytes', async () => {
    expect(await dayPlanPdf(smallDay())).toEqual(await dayPlanPdf(smallDay()));
  });

  it('another day gives other bytes', async () => {
    const other = { ...day, costs: { ...day.costs, wireMinor: 1 } };
    expect(await dayPlanPdf(other)).not.toEqual(await dayPlanPdf(day));
  });

  it.skipIf(!canReadText)('says what is late and why', async () => {
    const text = runningText(await dayPlanPdf(day));
    expect(text).toContain('3 orders for 4 sets, 1 late.');
    expect(text).toMatch(
      /R-1045 Bram Øsk Mon 13 Apr 2026 Tue 14 Apr 2026 1 day It was due on Mon 13 Apr 2026, before this day began\./,
    );
  });

  it.skipIf(!canReadText)('names every run, its times and why it stands there', async () => {
    const text = runningText(await dayPlanPdf(day));
    for (const run of day.plan.runs) expect(text).toContain(run.lotId);
    expect(text).toContain('No other machine can make it.');
    expect(text).toContain('Wed 15 Apr 08:00');
  });

  it.skipIf(!canReadText)('says which wire to fetch from which spool and what is short', async () => {
    const text = runningText(await dayPlanPdf(day));
    expect(text).toContain('S-31 (H2210): 0.204 kg, leaves 4.610 kg');
    expect(text).toContain('0.350 kg, empties it');
    expect(text).toContain('0.131 kg');
  });

  it.skipIf(!canReadText)('no line of the orders file vanishes', async () => {
    const text = runningText(await dayPlanPdf(day));
    expect(text).toContain('1 fault to mend in the file.');
    expect(text).toContain('R-1046');
    expect(text).toContain('Evning six');
  });

  it.skipIf(!canReadText)('tells what players should hear, what bins lack, and the costs', async () => {
    const text = runningText(await dayPlanPdf(day));
    expect(text).toContain('All strings together pull 812.0 N (182.54 lbf)');
    expect(text).toContain('Wire round steel 13 does not suffice: 0.052 kg too little.');
    expect(text).toContain('All together EUR 262.74');
  });

  it.skipIf(!canReadText)('a day without runs says so', async () => {
    const text = runningText(await dayPlanPdf({ ...day, sheets: [], plan: { ...day.plan, runs: [] } }));
    expect(text).toContain('No machine runs on this day.');
  });

  it.skipIf(!canReadText)('no word runs off the page or over another', async () => {
    expect(misplacedWords(await dayPlanPdf(day))).toEqual([]);
  });
});
