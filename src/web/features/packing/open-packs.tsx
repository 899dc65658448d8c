import { useNavigate } from '@tanstack/react-router';
import { useDo } from '../../api/use-do.js';
import { useOutbox } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Order } from './packing-roll.js';

interface OpenPacksProps {
  readonly order: Order;
  /** Sets of it that lack a pack where others have theirs; 0 where none has. */
  readonly rest: number;
  readonly kind?: 'main' | 'plain';
}

/** Opens a pack for each set of an order that has none, and goes to the first. */
export function OpenPacks({ order, rest, kind = 'main' }: OpenPacksProps) {
  const words = useWords(PACKING_WORDS);
  const { run, busy, problem } = useDo('open-packs');
  const { isOnline } = useOutbox();
  const navigate = useNavigate();
  const open = async () => {
    const answer = await run({ orderId: order.id, expectedVersion: order.version });
    const first = answer.ok ? answer.value.packs.find(({ state }) => state === 'open') : undefined;
    if (first) await navigate({ to: '/packing', search: { pack: first.id } });
  };
  if (!isOnline) return <p className="quiet">{words.needsLine}</p>;
  return (
    <>
      <Button
        kind={kind}
        size="floor"
        busy={busy}
        onClick={() => void open()}
        aria-label={rest > 0 ? undefined : words.beginNamed(order.body.number)}
      >
        {rest > 0 ? words.openRest(rest) : words.begin}
      </Button>
      <ProblemBox problem={problem} />
    </>
  );
}
