import { useOutbox } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Order } from './packing-roll.js';
import { useOpenPacks } from './use-open-packs.js';

interface OpenPacksProps {
  readonly order: Order;
  /** Sets of it that lack a pack where others have theirs; 0 where none has. */
  readonly rest: number;
  readonly kind?: 'main' | 'plain';
}

/** Opens a pack for each set of an order that has none, and goes to the first. */
export function OpenPacks({ order, rest, kind = 'main' }: OpenPacksProps) {
  const words = useWords(PACKING_WORDS);
  const { open, busy, problem } = useOpenPacks();
  const { isOnline } = useOutbox();
  if (!isOnline) return <p className="quiet">{words.needsLine}</p>;
  return (
    <>
      <Button
        kind={kind}
        size="floor"
        busy={busy}
        onClick={() => void open(order)}
        aria-label={rest > 0 ? undefined : words.beginNamed(order.body.number)}
      >
        {rest > 0 ? words.openRest(rest) : words.begin}
      </Button>
      <ProblemBox problem={problem} />
    </>
  );
}
