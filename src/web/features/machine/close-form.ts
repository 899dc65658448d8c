import type { InputNamed } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import type { Reason } from '../../parts/tallies.js';
import type { RunCount } from './run-count.js';
import { grossRule } from './spool-weight.js';

type Closing = InputNamed<'close-run'>;

/** The end of a run as it is being typed. */
export interface CloseForm {
  readonly good: string;
  /** Texts of the counts, by reason. */
  readonly scrap: readonly { readonly reason: string; readonly count: string }[];
  readonly binId: string | undefined;
  /** Texts of the weights by the spools' ids; left out or empty where a spool was not weighed. */
  readonly weights: Readonly<Record<string, string>>;
}

export const COUNT_RULE: AmountRule = { units: { '': 1 }, bare: '', least: 0, most: 100_000, whole: true };

/** As counted; or an entry that was refused, to be mended. */
export function closeFormOf(count: RunCount, mended: Closing | undefined): CloseForm {
  const scrap: readonly Reason[] = mended?.scrap ?? count.scrap;
  return {
    good: String(mended?.good ?? count.good),
    scrap: scrap.map((each) => ({ reason: each.reason, count: String(each.count) })),
    binId: mended?.binId,
    weights: Object.fromEntries(
      (mended?.spools ?? []).flatMap(({ spoolId, grossKg }) =>
        grossKg === undefined ? [] : [[spoolId, String(grossKg)]],
      ),
    ),
  };
}

/** What goes to the shop; undefined while a figure cannot be read or the bin is missing. */
export function closingOf(
  form: CloseForm,
  of: {
    readonly run: RecordOf<'run'>;
    readonly spools: readonly RecordOf<'spool'>[];
    readonly lotId: string;
    readonly lotName: string;
  },
): Closing | undefined {
  const { run, spools, lotId, lotName } = of;
  const good = readAmount(form.good, COUNT_RULE);
  const scrap = form.scrap.map(({ reason, count }) => ({ reason, count: readAmount(count, COUNT_RULE) }));
  const weights = spools.map((spool) => ({
    spoolId: spool.id,
    text: form.weights[spool.id]?.trim() ?? '',
    rule: grossRule(spool),
  }));
  const weighed = weights.filter(({ text }) => text !== '');
  const grosses = weighed.map(({ spoolId, text, rule }) => ({ spoolId, gross: readAmount(text, rule) }));
  if (!good.ok || form.binId === undefined) return undefined;
  if (scrap.some(({ count }) => !count.ok) || grosses.some(({ gross }) => !gross.ok)) return undefined;
  return {
    runId: run.id,
    expectedVersion: run.version,
    lotId,
    lotName,
    binId: form.binId,
    good: good.value,
    scrap: scrap.flatMap(({ reason, count }) =>
      count.ok && count.value > 0 ? [{ reason, count: count.value }] : [],
    ),
    spools: grosses.flatMap(({ spoolId, gross }) => (gross.ok ? [{ spoolId, grossKg: gross.value }] : [])),
  };
}
