import { useCallback } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { useShopView } from './use-shop.js';

/** The name of whoever did something, from how the journal writes it: `person/ID`, `token/ID`, `console`. */
export function useWho(): (by: string) => string {
  const words = useWords(PARTS_WORDS);
  const people = useShopView().data?.people;
  return useCallback(
    (by) => {
      const [kind, id = ''] = by.split('/');
      if (kind === 'person') return people?.[id] ?? words.bySomebody;
      return kind === 'token' ? words.byScript : words.byConsole;
    },
    [people, words],
  );
}
