import type { FastifyInstance } from 'fastify';
import {
  problemDetails,
  READINGS,
  type ReadingAnswer,
  type ReadingDefinition,
  type ReadingName,
  type ReadingQuery,
  USUAL_PAGE,
} from '../../contract/index.js';
import { LIVES } from '../../core/stock/index.js';
import type { ReadTransaction, Store } from '../../workshop/index.js';

/** A route for each reading: the ledger, the readings of the floor, the journal, the lives of records. */
export function readingRoutes(api: FastifyInstance, store: Store): void {
  for (const name of Object.keys(READINGS) as ReadingName[]) {
    const { summary, permission, query, answer }: ReadingDefinition = READINGS[name];
    const read = READ[name] as (tx: ReadTransaction, query: unknown) => Promise<unknown>;
    api.get(`/${name}`, {
      config: { permission },
      schema: {
        operationId: `list-${name}`,
        summary,
        tags: [name],
        'x-permission': permission,
        querystring: query,
        response: { 200: answer, default: problemDetails },
      },
      handler: (request) => store.read((tx) => read(tx, request.query)),
    });
  }
}

type Read<Name extends ReadingName> = (
  tx: ReadTransaction,
  query: ReadingQuery<Name>,
) => Promise<Unwritable<ReadingAnswer<Name>>>;

/** Where each is read. */
const READ: { readonly [Name in ReadingName]: Read<Name> } = {
  balances: async ({ ledger }, query) => ({ items: await ledger.balances(query) }),
  movements: ({ ledger }, query) => ledger.movements(paged(query)),
  'trial-strings': async ({ readings }, { runId }) => ({ items: await readings.trialStrings(runId) }),
  measurements: ({ readings }, query) => readings.measurements(paged(query)),
  tallies: ({ readings }, query) => readings.tallies(paged(query)),
  journal: ({ journal }, query) => journal.list(paged(query)),
  lives: async () => ({ items: Object.values(LIVES) }),
};

const paged = <Query extends { readonly limit?: number }>(query: Query) => ({
  ...query,
  limit: query.limit ?? USUAL_PAGE,
});

/** The same, but that nobody here may write to it: what the store gives is for reading. */
type Unwritable<Value> = Value extends object
  ? { readonly [Field in keyof Value]: Unwritable<Value[Field]> }
  : Value;
