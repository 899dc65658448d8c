import { type QueryClient, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { ReadingName } from '../../contract/index.js';

/**
 * The topics that each reading follows; records change by their own kind. What takes long to work out of all strings follows
 * only what is settled, so that tablets at work do not keep the shop reckoning for an open page.
 */
const READ_FROM: Readonly<Record<ReadingName, readonly string[] | 'all'>> = {
  balances: ['movement'],
  movements: ['movement'],
  'trial-strings': ['trial-string'],
  'past-dial-ins': ['run', 'machine', 'recipe', 'settings'],
  'set-ups-learned': ['run', 'trial-string', 'measurement', 'tally', 'machine', 'recipe'],
  'voided-entries': ['tally', 'measurement', 'trial-string'],
  'my-cautions': ['caution-reading'],
  'caution-readings': ['caution-reading'],
  measurements: ['measurement'],
  'end-checks': ['end-check'],
  calibration: ['settings', 'recipe'],
  'machine-wear': ['settings', 'machine'],
  'complaint-register': ['complaint', 'pack'],
  'complaint-trace': ['complaint', 'pack', 'string-lot'],
  'dry-room-air': ['dry-room-reading', 'settings'],
  'lots-lying-during': ['movement', 'string-lot'],
  quality: ['measurement', 'tally', 'run', 'string-lot'],
  'quality-run': ['measurement', 'trial-string', 'run'],
  tallies: ['tally'],
  journal: 'all',
  'shop-view': 'all',
  'day-view': 'all',
  'plan-view': 'all',
  needs: 'all',
  'strings-lying': ['movement', 'string-lot', 'bin'],
  'wire-cover': ['movement', 'spool', 'wire', 'settings'],
  'packing-roll': ['order', 'pack', 'movement', 'string-lot', 'bin'],
  lives: [],
  now: [],
  search: [],
};

/** Of many changes in a moment the page asks once. */
const GATHERED_FOR_MS = 150;

/** How the line to the shop stands; `opening` until the first word of it. */
export type Line = 'opening' | 'up' | 'down';

/** Hears what changes in the shop while someone is signed in, and asks anew for what is on the screen. Gives how the line stands. */
export function useLive(onSignInEnded: () => void): Line {
  const queries = useQueryClient();
  const [line, setLine] = useState<Line>('opening');
  useEffect(() => {
    const source = new EventSource('/api/v1/events');
    const gather = gathering(queries);
    // What happened while the line was down is told after the last event that was heard; before the first, all is fresh.
    source.addEventListener('open', () => setLine('up'));
    source.addEventListener('error', () => setLine('down'));
    source.addEventListener('change', (event) => {
      const { topic } = JSON.parse((event as MessageEvent<string>).data) as { readonly topic: string };
      gather.add(topic);
    });
    source.addEventListener('start-over', () => void queries.invalidateQueries());
    source.addEventListener('sign-in-ended', onSignInEnded);
    return () => {
      gather.stop();
      source.close();
    };
  }, [queries, onSignInEnded]);
  return line;
}

function gathering(queries: QueryClient) {
  const topics = new Set<string>();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const askAnew = () => {
    waiting = undefined;
    const changed = [...topics];
    topics.clear();
    void queries.invalidateQueries({ predicate: ({ queryKey }) => isTouched(queryKey, changed) });
  };
  return {
    add: (topic: string) => {
      topics.add(topic);
      waiting ??= setTimeout(askAnew, GATHERED_FOR_MS);
    },
    stop: () => clearTimeout(waiting),
  };
}

function isTouched([what, name]: readonly unknown[], topics: readonly string[]): boolean {
  if (what === 'record') return topics.includes(String(name));
  const from = what === 'reading' ? READ_FROM[name as ReadingName] : undefined;
  return from === 'all' || (from?.some((topic) => topics.includes(topic)) ?? false);
}
