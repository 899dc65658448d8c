import type { UseCaseDefinition } from '../use-case.js';
import * as access from './access.js';
import * as calibration from './calibration.js';
import * as dialRounds from './dial-rounds.js';
import * as dryRoom from './dry-room.js';
import * as orders from './orders.js';
import * as packing from './packing.js';
import * as production from './production.js';
import * as shop from './shop.js';
import * as stock from './stock.js';

/** Enrolling a device sets its cookie, so the server answers it otherwise than the use case does. */
const { enrolDevice: _setsACookie, ...accessCases } = access;

const ALL = {
  ...accessCases,
  ...calibration,
  ...dialRounds,
  ...dryRoom,
  ...orders,
  ...packing,
  ...production,
  ...shop,
  ...stock,
} as const;
type All = typeof ALL;

/** Every definition of a use case, by its name. */
export type Definitions = {
  readonly [Key in keyof All as All[Key] extends UseCaseDefinition ? All[Key]['name'] : never]: All[Key];
};

const every: readonly unknown[] = Object.values(ALL);

export const DEFINITIONS = Object.fromEntries(
  every.filter(isDefinition).map((definition) => [definition.name, definition]),
) as unknown as Definitions;

function isDefinition(value: unknown): value is UseCaseDefinition {
  return typeof value === 'object' && value !== null && 'path' in value && 'input' in value;
}
