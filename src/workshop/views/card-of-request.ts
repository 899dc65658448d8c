import type { BodyOf } from '../../contract/index.js';
import type { CalendarDate } from '../../core/foundation/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import { refuse } from '../refusal.js';

export interface RequestToPrint {
  readonly request: BodyOf<'request'>;
  readonly shop: { readonly name: string; readonly invented: boolean };
  /** Day on which the request last changed. */
  readonly date: CalendarDate;
}

/** A request with whose shop it is, for its card. Refuses where there is no such request, or nothing is settled yet. */
export async function cardOfRequest(
  { records }: Pick<ReadTransaction, 'records'>,
  id: string,
): Promise<RequestToPrint> {
  const record = await records.get('request', id);
  if (!record) return refuse({ code: 'record.missing', kind: 'request', id });
  const [settled] = await records.all('settings');
  if (!settled) return refuse({ code: 'settings.missing' });
  const { name, invented } = settled.body;
  return { request: record.body, shop: { name, invented }, date: localClock(record.updatedAt).date };
}
