import { createContext, type ReactNode, use, useCallback, useMemo, useState } from 'react';
import { LENGTH_UNITS, PULL_UNITS, type Sight } from '../../contract/index.js';
import { client } from '../api/client.js';
import { freshId } from '../api/fresh-id.js';
import { useSession } from '../api/session.js';

interface SightChoice {
  readonly sight: Sight;
  readonly choose: (change: Partial<Sight>) => void;
}

const SightContext = createContext<SightChoice | undefined>(undefined);

const FIRST: Sight = { pull: 'N', length: 'in', locale: '' };
const KEPT_AS = 'tautwork.sight';

/** In which units and by whose customs figures are shown: as the person has settled it, on every screen; before sign-in and without
 * a network as this browser remembers. */
export function SightProvider({ children }: { readonly children: ReactNode }) {
  const { standing } = useSession();
  const settled = standing.kind === 'somebody' ? standing.me.sight : undefined;
  const [chosen, setChosen] = useState<Sight>();
  const sight = chosen ?? settled ?? keptSight();
  const isSomebody = standing.kind === 'somebody';
  const choose = useCallback(
    (change: Partial<Sight>) => {
      const next = { ...sight, ...change };
      localStorage.setItem(KEPT_AS, JSON.stringify(next));
      setChosen(next);
      // Where no answer comes the browser's own memory has to do; the next choice tells the shop again.
      if (isSomebody) void client.perform('save-sight', next, { requestId: freshId() });
    },
    [sight, isSomebody],
  );
  const choice = useMemo(() => ({ sight, choose }), [sight, choose]);
  return <SightContext value={choice}>{children}</SightContext>;
}

export function useSight(): SightChoice {
  const choice = use(SightContext);
  if (!choice) throw new Error('Broken promise inside Tautwork: a figure stands outside of any sight');
  return choice;
}

function keptSight(): Sight {
  try {
    const kept = JSON.parse(localStorage.getItem(KEPT_AS) ?? 'null') as Partial<Sight> | null;
    return {
      pull: PULL_UNITS.find((unit) => unit === kept?.pull) ?? FIRST.pull,
      length: LENGTH_UNITS.find((unit) => unit === kept?.length) ?? FIRST.length,
      locale: typeof kept?.locale === 'string' ? kept.locale : FIRST.locale,
    };
  } catch {
    return FIRST;
  }
}
