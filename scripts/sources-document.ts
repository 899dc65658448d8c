import {
  ALLOYS,
  type Alloy,
  type Shelf,
  SOURCES,
  type Source,
  type SourceKey,
} from '../src/core/materials/index.js';

const SHELVES: Readonly<Record<Shelf, string>> = {
  'wire standards': 'Standards and tables of wire',
  'figures of materials': 'Figures of materials',
  'physics of strings': 'Physics of strings',
  'pitch and units': 'Pitch and units',
  'numbers and uncertainty': 'Numbers and uncertainty',
  quality: 'Quality',
  winding: 'Winding',
  planning: 'Planning',
  'orders and documents': 'Orders and documents',
  safety: 'Safety',
  'no source': 'Without a source',
};

/** Something of a material that stands on a source. */
interface Figure {
  readonly of: Alloy;
  readonly what: string;
  readonly shown: string;
  readonly fromMemory: boolean;
  readonly sources: readonly SourceKey[];
  readonly note?: string;
}

/** `docs/sources.md`, made from the data: every source once, what rests on it, and what rests on memory. */
export function sourcesDocument(): string {
  const figures = Object.values(ALLOYS).flatMap(figuresOf);
  const shelves = (Object.keys(SHELVES) as Shelf[]).flatMap((shelf) => shelfSection(shelf, figures));
  return `${[...OPENING, ...shelves, ...memorySection(figures)].join('\n')}\n`;
}

const OPENING = [
  '# Sources',
  '',
  'Every source of the project, once. This page is made from `src/core/materials` (its files `sources-of-...`) by',
  '`npx tsx scripts/write-sources.ts`; a test fails when it is out of date. "Read" says what was really in',
  'front of the reader, which often was not the standard itself: buy the standard before you rely on a figure.',
  'Figures in the data carry one of three standings: *printed* on the page named, *derived* from such figures',
  'by arithmetic, or from *memory*, which nothing confirms and a workshop should replace by its own.',
  '',
];

function shelfSection(shelf: Shelf, figures: readonly Figure[]): readonly string[] {
  const entries = (Object.entries(SOURCES) as [SourceKey, Source][]).filter(
    ([, source]) => source.shelf === shelf,
  );
  const lines = entries.map(([key, source]) =>
    entry(source, key === 'recalled' ? [] : restingOn(key, figures)),
  );
  return [`## ${SHELVES[shelf]}`, '', ...lines, ''];
}

function entry(source: Source, resting: readonly string[]): string {
  const head = `- **${capitalised(source.by)}${source.year === undefined ? '' : ` (${source.year})`}.** ${source.title}.`;
  const rest = resting.length === 0 ? [] : [`Rests on it: ${resting.join('; ')}.`];
  return [head, `Read: ${source.read}.`, ...(source.note === undefined ? [] : [source.note]), ...rest].join(
    ' ',
  );
}

function restingOn(key: SourceKey, figures: readonly Figure[]): readonly string[] {
  const named = new Map<string, Set<string>>();
  for (const { of, what } of figures.filter(({ sources }) => sources.includes(key))) {
    named.set(of.name, (named.get(of.name) ?? new Set()).add(what));
  }
  return [...named].map(([name, what]) => `${name} (${[...what].join(', ')})`);
}

function memorySection(figures: readonly Figure[]): readonly string[] {
  const rows = figures
    .filter(({ fromMemory }) => fromMemory)
    .map(({ of, what, shown, note }) => `| ${of.name} | ${what} | ${shown} | ${note ?? ''} |`);
  return [
    '## Figures from memory',
    '',
    '| Material | Figure | Value | Note |',
    '| --- | --- | --- | --- |',
    ...rows,
  ];
}

function figuresOf(of: Alloy): readonly Figure[] {
  const scalars = [
    { what: 'density', shown: `${Math.round(of.densityKgPerM3.value)} kg/m³`, figure: of.densityKgPerM3 },
    { what: 'modulus', shown: `${trimmed(of.youngsModulusPa.value / 1e9)} GPa`, figure: of.youngsModulusPa },
    {
      what: 'expansion',
      shown: `${trimmed(of.expansionPerK.value * 1e6)} × 10⁻⁶/K`,
      figure: of.expansionPerK,
    },
  ].map(({ what, shown, figure }) => ({
    of,
    what,
    shown,
    fromMemory: figure.standing === 'memory',
    sources: figure.sources,
    ...(figure.note === undefined ? {} : { note: figure.note }),
  }));
  return [...scalars, ...nickelOf(of), ...strengthsOf(of)];
}

const nickelOf = (of: Alloy): readonly Figure[] =>
  of.nickelMassShare === undefined
    ? []
    : [
        {
          of,
          what: 'nickel by mass',
          shown: `${trimmed(of.nickelMassShare.least * 100)} to ${trimmed(of.nickelMassShare.most * 100)} %`,
          fromMemory: of.nickelMassShare.standing === 'memory',
          sources: of.nickelMassShare.sources,
        },
      ];

const strengthsOf = (of: Alloy): readonly Figure[] =>
  of.tempers.map((band) => ({
    of,
    what: 'strength',
    shown: `${band.temper}: ${Math.round(band.minimumPa / 1e6)} MPa at least`,
    fromMemory: band.standing === 'memory',
    sources: band.sources,
  }));

const trimmed = (value: number): string => String(Math.round(value * 100) / 100);

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
