/** What a column of an orders file can hold. */
export type Column =
  | 'order'
  | 'player'
  | 'quantity'
  | 'due'
  | 'note'
  | 'set'
  | 'gauges'
  | 'material'
  | 'end'
  | 'instrument'
  | 'scale'
  | 'tuning'
  | 'likes'
  | 'likesMaterial'
  | 'likesScale'
  | 'likesTuning'
  | 'wishes';

/** A row of a table as read from a file: the cells by the file's own headings. */
export interface TableRow {
  /** Line in the file, counted from 1; of a row that spans lines, the first. */
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
}

/** Which heading of the file holds what, and which headings mean nothing to us. */
export interface ColumnMap {
  readonly headingOf: Readonly<Partial<Record<Column, string>>>;
  readonly ignored: readonly string[];
  /** Columns that two headings claim. */
  readonly doubled: readonly { readonly column: Column; readonly headings: readonly string[] }[];
}

/** Headings that people write, bare of case, spaces and signs. The first is the one our own files use. */
export const HEADINGS: Readonly<Record<Column, readonly string[]>> = {
  order: ['order', 'orderid', 'orderno', 'ordernumber', 'id'],
  player: ['player', 'customer', 'name', 'client', 'for'],
  quantity: ['quantity', 'qty', 'count', 'howmany', 'sets', 'pieces'],
  due: ['due', 'duedate', 'wantedby', 'shipby', 'deadline'],
  note: ['note', 'notes', 'remark', 'remarks', 'comment', 'comments'],
  set: ['set', 'stockset', 'setname'],
  gauges: ['gauges', 'gauge', 'strings', 'customgauges'],
  material: ['material', 'wrap', 'wrapmaterial'],
  end: ['end', 'ends', 'endtype'],
  instrument: ['instrument', 'guitar'],
  scale: ['scale', 'scalelength', 'scales', 'scalelengths'],
  tuning: ['tuning', 'tunedto', 'tune'],
  likes: ['likes', 'likesset', 'reference', 'referenceset', 'playsnow'],
  likesMaterial: ['likesmaterial', 'referencematerial'],
  likesScale: ['likesscale', 'referencescale'],
  likesTuning: ['likestuning', 'referencetuning'],
  wishes: ['wishes', 'wish', 'wants'],
};

/** For a column, the heading that a person says the file has for it. */
export type ToldColumns = Readonly<Partial<Record<Column, string>>>;

/**
 * Finds what each heading of a file means; case, spaces, points, dashes and underscores do not matter. What a
 * person told of a heading goes before what it usually means.
 */
export function mapColumns(headings: readonly string[], told: ToldColumns = {}): ColumnMap {
  const toldOf = new Map((Object.keys(told) as Column[]).map((column) => [told[column], column]));
  const claims = new Map<Column, string[]>();
  const ignored: string[] = [];
  for (const heading of headings) {
    const usual = COLUMN_OF.get(bare(heading));
    const column =
      toldOf.get(heading) ?? (usual !== undefined && told[usual] === undefined ? usual : undefined);
    if (column === undefined) {
      if (heading.trim() !== '') ignored.push(heading);
      continue;
    }
    claims.set(column, [...(claims.get(column) ?? []), heading]);
  }
  return {
    headingOf: Object.fromEntries([...claims].map(([column, named]) => [column, named[0]])),
    ignored,
    doubled: [...claims]
      .filter(([, named]) => named.length > 1)
      .map(([column, named]) => ({ column, headings: named })),
  };
}

const bare = (heading: string): string =>
  heading
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\(.*\)/g, '')
    .replace(/[^\p{L}\p{N}]/gu, '');

const COLUMN_OF: ReadonlyMap<string, Column> = new Map(
  (Object.keys(HEADINGS) as Column[]).flatMap((column) =>
    HEADINGS[column].map((heading) => [heading, column] as const),
  ),
);
