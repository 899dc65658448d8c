import { byText, type Chance, grouped } from '../../foundation/index.js';
import { binomial, exposureTest, holm, type Interval, rateInterval } from '../../stats/index.js';

/**
 * What is known of where a string came from: `machine` to its name, `gauge` to its gauge; several for a sort of which it has
 * several, such as lots of wire. Of what is not known, nothing.
 */
export type Traits = Readonly<Record<string, string | readonly string[]>>;

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
 * Of strings that went out, how many were complained of by where they came from. Rates with the exact interval for counts.
 * Whether the sources of a sort differ: by the exact multinomial test, where a string is of one source; where it may be of
 * several, by the binomial tail of each against all strings. One question for each sort, made good by Holm over the sorts; then
 * each source by its binomial tail, made good over the sources of its sort. Strings and complaints of which a trait is
 * not known are left out of its table, both.
 */
export function complaintSources(
  sent: readonly StringsOut[],
  complained: readonly Traits[],
  chance: Chance,
): readonly SourceTable[] {
  const sorts = [...new Set(sent.flatMap(({ traits }) => Object.keys(traits)))].sort(byText);
  const tables = sorts.map((by) => tableOf(by, sent, complained));
  const tests = tables.map((table) => testOf(table, chance));
  const adjusted = holm(tests.flatMap((test) => (test ? [test.p] : [])));
  let asked = 0;
  return tables.map(({ by, rates }, at) => {
    const test = tests[at];
    if (!test) return { by, rates };
    const found = rates.map((rate, row) => ({ ...rate, ...test.sources[row]! }));
    return {
      by,
      p: adjusted[asked++]!,
      rates: found.sort((a, b) => a.p - b.p || b.complaints - a.complaints || byText(a.name, b.name)),
    };
  });
}

interface CountedTable {
  readonly by: string;
  readonly rates: readonly SourceRate[];
  /** All that are known, each once. */
  readonly complaints: number;
  readonly strings: number;
  readonly isOfSeveral: boolean;
}

function tableOf(by: string, sent: readonly StringsOut[], complained: readonly Traits[]): CountedTable {
  const known = sent.filter(({ traits }) => traits[by] !== undefined);
  const own = complained.filter((traits) => traits[by] !== undefined);
  const counts = grouped(
    own.flatMap((traits) => sourcesIn(traits, by)),
    (name) => name,
  );
  const out = known.flatMap(({ traits, strings }) =>
    sourcesIn(traits, by).map((name) => ({ name, strings })),
  );
  const rates = [...grouped(out, ({ name }) => name)].map(([name, each]) => ({
    name,
    ...complaintRate(counts.get(name)?.length ?? 0, totalOf(each)),
  }));
  return {
    by,
    rates: rates.sort((a, b) => b.complaints - a.complaints || byText(a.name, b.name)),
    complaints: own.length,
    strings: totalOf(known),
    isOfSeveral: known.some(({ traits }) => typeof traits[by] !== 'string'),
  };
}

function sourcesIn(traits: Traits, by: string): readonly string[] {
  const named = traits[by] ?? [];
  return typeof named === 'string' ? [named] : [...new Set(named)];
}

const totalOf = (all: readonly { readonly strings: number }[]): number =>
  all.reduce((sum, { strings }) => sum + strings, 0);

interface Tested {
  readonly p: number;
  readonly sources: readonly { readonly times: number; readonly p: number }[];
}

function testOf(
  { rates, complaints, strings, isOfSeveral }: CountedTable,
  chance: Chance,
): Tested | undefined {
  if (complaints < LEAST_COMPLAINTS || rates.length < 2) return undefined;
  if (isOfSeveral) {
    const shares = rates.map((rate) => rate.strings / strings);
    const ps = holm(rates.map((rate, at) => binomial(complaints, shares[at]!).from(rate.complaints)));
    return {
      p: Math.min(...ps),
      sources: rates.map((rate, at) => ({ times: rate.complaints / (complaints * shares[at]!), p: ps[at]! })),
    };
  }
  const sources = rates.map(({ name, complaints: count, strings: exposure }) => ({ name, count, exposure }));
  const test = exposureTest(sources, chance);
  return test.ok
    ? { p: test.value.p, sources: test.value.sources.map(({ times, p }) => ({ times, p })) }
    : undefined;
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
