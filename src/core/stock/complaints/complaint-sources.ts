import { byText, type Chance, grouped } from '../../foundation/index.js';
import { exposureTest, holm, type Interval, rateInterval } from '../../stats/index.js';

/** What is known of where strings came from: `machine` to its name, `gauge` to its gauge; by what is not known, nothing. */
export type Traits = Readonly<Record<string, string>>;

export interface StringsOut {
  readonly traits: Traits;
  readonly strings: number;
}

export interface SourceRate {
  readonly name: string;
  readonly complaints: number;
  readonly strings: number;
  readonly perThousand: number;
  /** 95 %, of the rate per thousand. */
  readonly interval: Interval;
  /** How many times its share of the strings its share of the complaints is, and the chance of so many if all were alike. */
  readonly times?: number;
  readonly p?: number;
}

/** Complaints over all sources of one sort. */
export interface SourceTable {
  /** Which trait. */
  readonly by: string;
  readonly rates: readonly SourceRate[];
  /**
   * Chance that they fall so unevenly if all sources were alike, made good for asking of every sort; left out where there
   * are too few to ask.
   */
  readonly p?: number;
}

/** Fewer complaints than this say nothing about where they come from, however they fall. */
const LEAST_COMPLAINTS = 4;
const PER = 1000;

/**
 * Of strings that went out, how many were complained of by where they came from. Rates with the exact interval for counts;
 * whether the sources differ by the exact multinomial test, one question for each sort of source, made good by Holm over
 * the sorts; then each source by its binomial tail, made good over the sources of its sort. Strings and complaints
 * of which a trait is not known are left out of its table, both.
 */
export function complaintSources(
  sent: readonly StringsOut[],
  complained: readonly Traits[],
  chance: Chance,
): readonly SourceTable[] {
  const sorts = [...new Set(sent.flatMap(({ traits }) => Object.keys(traits)))].sort(byText);
  const tables = sorts.map((by) => tableOf(by, sent, complained));
  const tests = tables.map(({ rates }) => {
    const all = rates.reduce((sum, { complaints }) => sum + complaints, 0);
    if (all < LEAST_COMPLAINTS || rates.length < 2) return undefined;
    const sources = rates.map(({ name, complaints: count, strings: exposure }) => ({
      name,
      count,
      exposure,
    }));
    const test = exposureTest(sources, chance);
    return test.ok ? test.value : undefined;
  });
  const adjusted = holm(tests.flatMap((test) => (test ? [test.p] : [])));
  let asked = 0;
  return tables.map((table, at) => {
    const test = tests[at];
    if (!test) return table;
    const p = adjusted[asked++]!;
    const rates = table.rates.map((rate, row) => {
      const { times, p: own } = test.sources[row]!;
      return { ...rate, times, p: own };
    });
    return { ...table, p, rates: rates.toSorted((a, b) => a.p - b.p || byText(a.name, b.name)) };
  });
}

function tableOf(by: string, sent: readonly StringsOut[], complained: readonly Traits[]): SourceTable {
  const known = sent.filter(({ traits }) => traits[by] !== undefined);
  const counts = grouped(
    complained.filter((traits) => traits[by] !== undefined),
    (traits) => traits[by]!,
  );
  const rates = [...grouped(known, ({ traits }) => traits[by]!)].map(([name, own]) => {
    const strings = own.reduce((sum, each) => sum + each.strings, 0);
    return { name, ...complaintRate(counts.get(name)?.length ?? 0, strings) };
  });
  return { by, rates: rates.sort((a, b) => b.complaints - a.complaints || byText(a.name, b.name)) };
}

/** Complaints per thousand strings, with the exact 95 % interval of the count (Garwood). `strings` above 0. */
export function complaintRate(
  complaints: number,
  strings: number,
): Pick<SourceRate, 'complaints' | 'strings' | 'perThousand' | 'interval'> {
  const interval = rateInterval({ count: complaints, exposure: strings / PER });
  return {
    complaints,
    strings,
    perThousand: (complaints / strings) * PER,
    interval: interval.ok ? interval.value : { from: 0, to: Number.POSITIVE_INFINITY },
  };
}
