import type { Static, TSchema } from 'typebox';
import type { Permission } from '../permissions.js';
import { BODIES } from './bodies.js';

/** Kinds of record that the shop keeps, each with the form of its body. Movements, measurements and journal are apart. */
export const RECORD_KINDS = {
  wire: kind('wires', 'shop.read', ['name']),
  spool: kind('spools', 'stock.read', ['name', 'wireId', 'lot']),
  machine: kind('machines', 'shop.read', ['name']),
  person: kind('people', 'people.manage', ['name']),
  instrument: kind('instruments', 'shop.read', ['name']),
  tuning: kind('tunings', 'shop.read', ['name']),
  request: kind('requests', 'request.read', ['player']),
  set: kind('sets', 'shop.read', ['name']),
  recipe: kind('recipes', 'recipe.read', ['name', 'material', 'gaugeThou']),
  run: kind('runs', 'run.read', ['name', 'machineId', 'recipeId']),
  'string-lot': kind('string-lots', 'stock.read', ['name', 'runId', 'stringKey']),
  bin: kind('bins', 'stock.read', ['name']),
  'dry-room-reading': kind('dry-room-readings', 'stock.read', ['at']),
  order: kind('orders', 'order.read', ['number', 'player', 'due']),
  pack: kind('packs', 'order.read', ['orderId', 'labelCode']),
  complaint: kind('complaints', 'complaint.read', ['player', 'faultCode']),
  document: kind('documents', 'shop.read', ['title', 'ofKind', 'ofId']),
  plan: kind('plans', 'plan.read', ['date']),
  settings: kind('settings', 'shop.read', []),
  'dial-round': kind('dial-rounds', 'shop.read', ['machineId']),
} as const satisfies Readonly<Record<keyof typeof BODIES, RecordKindDefinition>>;

export type RecordKind = keyof typeof RECORD_KINDS;
export type BodyOf<Kind extends RecordKind> = Static<(typeof BODIES)[Kind]>;

export interface RecordKindDefinition {
  /** Below `/api/v1`: `/wires`, `/wires/{id}`. Also the table's name, with underscores. */
  readonly collection: string;
  readonly readPermission: Permission;
  /** Fields of the body that are columns of their own, so that lists can be filtered by them. */
  readonly keys: readonly string[];
}

/** A record as it is kept and sent. Times are ISO 8601 UTC with milliseconds. */
export interface StoredRecord<Body = unknown> {
  readonly id: string;
  /** Counts up with every change, from 1. */
  readonly version: number;
  /** Where it stands in its lifecycle; empty where its kind has none. */
  readonly state: string;
  readonly createdAt: string;
  readonly updatedAt: string;
  readonly body: Body;
}

export const bodySchema = (kindName: RecordKind): TSchema => BODIES[kindName];

function kind(collection: string, readPermission: Permission, keys: readonly string[]): RecordKindDefinition {
  return { collection, readPermission, keys };
}
