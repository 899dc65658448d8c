import type { Shop } from '../../../core/day/index.js';
import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import { type Column, type OrderFault, type PlayerRequest, readOrders } from '../../../core/orders/index.js';

/**
 * Reads a request from cells as from the one line of an orders file, so that what is typed on the page means
 * just what it means there. Whose it is and when it is due are not asked on the page and not used.
 */
export function readRequestLine(
  cells: Readonly<Partial<Record<Column, string>>>,
  shop: Shop,
): Result<PlayerRequest, readonly OrderFault[]> {
  const whole = { ...NOT_ASKED, ...cells };
  const { lines, faults } = readOrders(Object.keys(whole), [{ line: 1, cells: whole }], shop);
  const wanted = lines[0]?.wanted;
  if (wanted?.kind === 'request') return succeed(wanted.request);
  return fail(faults);
}

const NOT_ASKED = { order: 'page', quantity: '1', due: '2000-01-01' };
