import type { ShopView } from '../../../contract/index.js';
import { BigWord } from '../../parts/big-word.js';
import { useWords } from '../../words/language.js';
import { SPOOL_WORDS } from '../../words/machine.js';
import type { SpoolFound } from './find-spool.js';
import { wireNamesOf } from './wire-names.js';

interface SpoolVerdictProps {
  readonly found: SpoolFound;
  readonly text: string;
  readonly wireIds: readonly string[];
  readonly view: ShopView;
}

/** What was scanned, in letters that are read from a metre away: the right wire, or why it stays off the machine. */
export function SpoolVerdict({ found, text, wireIds, view }: SpoolVerdictProps) {
  const words = useWords(SPOOL_WORDS);
  const wireOf = wireNamesOf(view);
  switch (found.kind) {
    case 'right': {
      const { name, wireId } = found.spool.body;
      return <BigWord tone="done" word={words.accepted} more={words.acceptedMore(name, wireOf(wireId))} />;
    }
    case 'wrong-wire': {
      const { name, wireId } = found.spool.body;
      const wanted = wireIds.map(wireOf).join(', ');
      return (
        <BigWord
          tone="stopped"
          word={words.wrongWire}
          more={words.wrongWireMore(name, wireOf(wireId), wanted)}
        />
      );
    }
    case 'several':
      return (
        <BigWord tone="care" word={words.several} more={words.severalMore(found.spools[0]?.body.lot ?? '')} />
      );
    case 'unknown':
      return <BigWord tone="stopped" word={words.unknown} more={words.unknownMore(text)} />;
    default:
      return (
        <BigWord
          tone="stopped"
          word={words.notUsable}
          more={words.unusable[found.kind](found.spool.body.name)}
        />
      );
  }
}
