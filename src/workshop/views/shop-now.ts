import type { ReadingAnswer } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';

/** The moment in the shop, the day that it is there by the computer's time zone, and whose shop it is. */
export async function shopNow(
  { records }: Pick<ReadTransaction, 'records'>,
  now: string,
): Promise<ReadingAnswer<'now'>> {
  const [settled] = await records.all('settings');
  return {
    now,
    today: localClock(now).date,
    shop: settled?.body.name ?? '',
    invented: settled?.body.invented ?? false,
  };
}
