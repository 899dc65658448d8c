import Type, { type TOptional, type TSchema } from 'typebox';
import { LIVES } from '../../core/stock/index.js';
import { id } from '../records/bodies.js';
import { bodySchema, RECORD_KINDS, type RecordKind } from '../records/record-kinds.js';
import { closed, oneOf, text } from '../schemas/pieces.js';

export const MOST_A_PAGE = 500;
export const USUAL_PAGE = 50;

const paging = {
  after: Type.Optional(text('`next` of the page before')),
  limit: Type.Optional(
    Type.Integer({
      minimum: 1,
      maximum: MOST_A_PAGE,
      default: USUAL_PAGE,
      description: 'most items on a page',
    }),
  ),
};

/** What a list of records may be narrowed by: its keys, its state, a text. */
export const recordQuery = (kind: RecordKind) =>
  closed({
    ...paging,
    order: Type.Optional(oneOf(['newest', 'oldest'], 'newest first where left out')),
    search: Type.Optional(text('that a key or the name holds, in any case')),
    ...stateQuery(kind),
    ...keyQueries(kind),
  });

export const balancesQuery = closed({
  account: Type.Optional(text('`bin/ID`, `spool/ID`, `scrap/REASON`')),
  accountPrefix: Type.Optional(text('`bin/`')),
  item: Type.Optional(text('`wire/ID`, `string/KEY`')),
  lot: Type.Optional(text()),
});

export const movementsQuery = closed({
  ...paging,
  account: Type.Optional(text()),
  item: Type.Optional(text()),
  lot: Type.Optional(text()),
});

export const trialStringsQuery = closed({ runId: id });
/** Readings of the floor are followed from the first on, as a run was. */
const asTaken = { order: Type.Optional(oneOf(['newest', 'oldest'], 'oldest first where left out')) };

export const measurementsQuery = closed({ ...paging, ...asTaken, runId: Type.Optional(id) });
export const talliesQuery = closed({
  ...paging,
  ...asTaken,
  runId: Type.Optional(id),
  lotId: Type.Optional(id),
});
export const setUpsLearnedQuery = closed({});
export const voidedEntriesQuery = closed({ runId: Type.Optional(id), lotId: Type.Optional(id) });
export const myCautionsQuery = closed({ machineId: id });
export const cautionReadingsQuery = closed({
  ...paging,
  machineId: Type.Optional(id),
  personId: Type.Optional(id),
});
export const endChecksQuery = closed({
  ...paging,
  runId: Type.Optional(id),
  wireId: Type.Optional(id),
  spoolId: Type.Optional(id),
  machineId: Type.Optional(id),
});
export const journalQuery = closed({
  ...paging,
  recordId: Type.Optional(text()),
  by: Type.Optional(text('`person/ID`, `token/ID` or `console`')),
});
export const livesQuery = closed({});

function stateQuery(kind: RecordKind): Record<string, TOptional<TSchema>> {
  const life = kind in LIVES ? LIVES[kind as keyof typeof LIVES] : undefined;
  if (!life) return {};
  const steps: readonly { readonly to: string }[] = Object.values(life.steps);
  return { state: Type.Optional(oneOf([...new Set([life.initial, ...steps.map(({ to }) => to)])])) };
}

function keyQueries(kind: RecordKind): Record<string, TOptional<TSchema>> {
  const { keys }: { readonly keys: readonly string[] } = RECORD_KINDS[kind];
  return Object.fromEntries(keys.map((key) => [key, Type.Optional(fieldOf(bodySchema(kind), key)!)]));
}

/** The form of a field; of a body that has several forms, the field of the first. */
function fieldOf(body: TSchema, name: string): TSchema | undefined {
  const { properties = {}, anyOf = [] } = body as {
    readonly properties?: Readonly<Record<string, TSchema>>;
    readonly anyOf?: readonly TSchema[];
  };
  return properties[name] ?? anyOf.map((form) => fieldOf(form, name)).find((field) => field !== undefined);
}
