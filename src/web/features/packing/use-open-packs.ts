import { useNavigate } from '@tanstack/react-router';
import { useDo } from '../../api/use-do.js';
import type { Order } from './packing-roll.js';

/** Opens a pack for each set of an order that has none, and goes to the first. */
export function useOpenPacks() {
  const { run, busy, problem } = useDo('open-packs');
  const navigate = useNavigate();
  const open = async (order: Order): Promise<void> => {
    const answer = await run({ orderId: order.id, expectedVersion: order.version });
    const first = answer.ok ? answer.value.packs.find(({ state }) => state === 'open') : undefined;
    if (first) await navigate({ to: '/packing', search: { pack: first.id } });
  };
  return { open, busy, problem };
}
