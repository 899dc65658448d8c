import type { QualityQuery } from '../../../contract/index.js';
import { GROUPINGS, type Grouping, MEASURES, type Measure } from '../../../core/quality/index.js';

/** What stands in the address of the room. */
export interface QualitySearch {
  readonly from?: string;
  readonly until?: string;
  readonly machine?: string;
  readonly recipe?: string;
  readonly lot?: string;
  readonly instrument?: string;
  readonly measure?: string;
  readonly by?: string;
  readonly mine?: string;
  /** The run that one looks at. */
  readonly run?: string;
}

export const measureOf = ({ measure }: QualitySearch): Measure =>
  MEASURES.find((known) => known === measure) ?? 'first';

export const groupingOf = ({ by }: QualitySearch): Grouping =>
  GROUPINGS.find((known) => known === by) ?? 'machine';

/** What the address asks for, as the shop takes it; what it cannot take is left out. */
export function askedOf(search: QualitySearch): QualityQuery {
  const { machine: machineId, recipe: recipeId, lot, instrument, mine } = search;
  const fields = {
    from: dayIn(search.from),
    until: dayIn(search.until),
    machineId,
    recipeId,
    lot,
    instrument,
    measure: measureOf(search),
    by: groupingOf(search),
    mine: mine === 'yes' ? 'yes' : undefined,
  };
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined && value !== ''),
  ) as QualityQuery;
}

const dayIn = (text: string | undefined): string | undefined =>
  text !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(text) && Number.isFinite(Date.parse(text))
    ? text
    : undefined;
