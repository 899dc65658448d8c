import { beginDialRound as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { DIAL_ROUND_LIFE } from '../../core/stock/index.js';
import { dialTableOf } from '../../core/winding/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/** Begins to measure a machine's dial; one round at a time for each dial. */
export const beginDialRound = useCase(definition, async ({ tx, now }, { id, ...asked }) => {
  const machine = await needRecord(tx, 'machine', asked.machineId);
  const { name } = machine.body;
  if (dialTableOf(machine.body, asked.quantity) === undefined)
    return fail({ code: 'dial-round.no-such-dial', machineName: name, quantity: asked.quantity });
  const open = (await tx.records.all('dial-round')).find(
    ({ state, body }) =>
      state === 'open' && body.machineId === machine.id && body.quantity === asked.quantity,
  );
  if (open) return fail({ code: 'dial-round.already-open', machineName: name, id: open.id });
  const dials = [...new Set(asked.dials)].toSorted((one, other) => one - other);
  if (dials.length < 2) return fail({ code: 'dial-round.too-few-numbers' });
  const body = { ...asked, dials, readings: [] };
  return succeed(
    await tx.records.insert('dial-round', { id, state: DIAL_ROUND_LIFE.initial, body, at: now }),
  );
});
