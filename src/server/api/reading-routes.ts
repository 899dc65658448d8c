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
import type { CalendarDate } from '../../core/foundation/index.js';
import { LIVES } from '../../core/stock/index.js';
import {
  type Actor,
  type Clock,
  calibrationSeen,
  complaintRegister,
  complaintTrace,
  daySeen,
  dryRoomAir,
  localClock,
  lotsLyingDuring,
  machineWearSeen,
  myCautions,
  needsSeen,
  packingSeen,
  pastDialIns,
  planSeen,
  qualityRunSeen,
  qualitySeen,
  type ReadTransaction,
  type SetBack,
  type ShopClock,
  type Store,
  search,
  setUpsSeen,
  shopNow,
  shopSeen,
  stringsLying,
  voidedEntries,
  wireCovers,
} from '../../workshop/index.js';
import { signedIn } from './guard.js';
import { untilNextEvent } from './until-next-event.js';

/** A route for each reading: the ledger, the readings of the floor, the journal, the lives of records. */
export function readingRoutes(api: FastifyInstance, store: Store, clock: Clock & Partial<ShopClock>): void {
  for (const name of Object.keys(READINGS) as ReadingName[]) {
    const { summary, permission, query, answer }: ReadingDefinition = READINGS[name];
    const readNow = READ[name] as (tx: ReadTransaction, query: unknown, asked: Asked) => Promise<unknown>;
    const read = LONG_WORK.has(name) ? untilNextEvent(readNow) : readNow;
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
      handler: (request) => {
        const setBack = clock.setBack?.();
        const asked = { actor: signedIn(request), now: clock.now(), ...(setBack ? { setBack } : {}) };
        return store.read((tx) => read(tx, request.query, asked));
      },
    });
  }
}

/** Worked out of all strings that were ever measured. */
const LONG_WORK: ReadonlySet<ReadingName> = new Set(['calibration', 'machine-wear', 'complaint-register']);

/** Who asks, and when. */
interface Asked {
  readonly actor: Actor;
  readonly now: string;
  /** How far the computer's clock stands behind, where it does. */
  readonly setBack?: SetBack;
}

type Read<Name extends ReadingName> = (
  tx: ReadTransaction,
  query: ReadingQuery<Name>,
  asked: Asked,
) => Promise<Unwritable<ReadingAnswer<Name>>>;

/** Where each is read. */
const READ: { readonly [Name in ReadingName]: Read<Name> } = {
  balances: async ({ ledger }, query) => ({ items: await ledger.balances(query) }),
  movements: ({ ledger }, query) => ledger.movements(paged(query)),
  'trial-strings': async ({ readings }, { runId }) => ({ items: await readings.trialStrings(runId) }),
  'past-dial-ins': async (tx, { machineId }) => ({ items: await pastDialIns(tx, machineId) }),
  measurements: ({ readings }, query) => readings.measurements(paged(query)),
  tallies: ({ readings }, query) => readings.tallies(paged(query)),
  'voided-entries': async (tx, query) => ({ items: await voidedEntries(tx, query) }),
  'my-cautions': (tx, { machineId }, { actor }) => myCautions(tx, { machineId, personId: actor.personId }),
  'caution-readings': async ({ cautionReadings }, query) =>
    (await cautionReadings.list(paged(query))) as ReadingAnswer<'caution-readings'>,
  'end-checks': ({ readings }, query) => readings.endChecks({ ...paged(query), order: 'newest' }),
  journal: ({ journal }, query) => journal.list(paged(query)),
  lives: async () => ({ items: Object.values(LIVES) }),
  now: (tx, _query, { now }) => shopNow(tx, now),
  'shop-view': (tx) => shopSeen(tx),
  'day-view': (tx, { date }, { now }) =>
    daySeen(tx, (date as CalendarDate | undefined) ?? localClock(now).date, now),
  'packing-roll': (tx) => packingSeen(tx),
  'plan-view': (tx, { date }, { now }) =>
    planSeen(tx, (date as CalendarDate | undefined) ?? localClock(now).date, now),
  needs: (tx, _query, asked) => needsSeen(tx, asked),
  'strings-lying': async (tx) => ({ items: await stringsLying(tx) }),
  'wire-cover': async (tx, _query, { now }) => ({ items: await wireCovers(tx, now) }),
  calibration: (tx, _query, { now }) => calibrationSeen(tx, now),
  'set-ups-learned': (tx) => setUpsSeen(tx),
  'machine-wear': (tx, _query, { now }) => machineWearSeen(tx, now),
  'complaint-register': (tx, query, { now }) => complaintRegister(tx, query, now),
  'complaint-trace': (tx, { complaintId }) => complaintTrace(tx, complaintId),
  'dry-room-air': (tx, query, { now }) => dryRoomAir(tx, query, now),
  'lots-lying-during': (tx, query) => lotsLyingDuring(tx, query),
  quality: (tx, query, asked) => qualitySeen(tx, query, asked),
  'quality-run': (tx, query) => qualityRunSeen(tx, query),
  search: async (tx, { text }, { actor }) => ({ hits: await search(tx, actor, text) }),
};

const paged = <Query extends { readonly limit?: number }>(query: Query) => ({
  ...query,
  limit: query.limit ?? USUAL_PAGE,
});

/** The same, but that nobody here may write to it: what the store gives is for reading. */
type Unwritable<Value> = Value extends object
  ? { readonly [Field in keyof Value]: Unwritable<Value[Field]> }
  : Value;
