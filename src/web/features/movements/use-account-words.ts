import { useCallback, useMemo } from 'react';
import { useAllRecords } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { useWords } from '../../words/language.js';
import { MOVEMENTS_WORDS } from '../../words/movements.js';

/** What an account of the ledger is called: a spool, a bin by its name, scrap by its reason. */
export function useAccountWords(): (account: string) => string {
  const words = useWords(MOVEMENTS_WORDS);
  const bins = useShopView().data?.ids.bins;
  const spools = useAllRecords('spool').data;
  const names = useMemo(
    () =>
      new Map<string, string>([
        ...Object.entries(bins ?? {}).map(([name, id]) => [`bin/${id}`, name] as const),
        ...(spools ?? []).map(({ id, body }) => [`spool/${id}`, body.name] as const),
      ]),
    [bins, spools],
  );
  return useCallback(
    (account) => {
      const [kind = '', ...rest] = account.split('/');
      if (kind === 'scrap') return words.scrap(rest.join('/'));
      if (kind === 'count-difference') return words.difference(rest.join('/'));
      return names.get(account) ?? words.accounts[kind] ?? account;
    },
    [names, words],
  );
}
