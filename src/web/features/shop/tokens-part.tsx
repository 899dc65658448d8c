import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Static } from 'typebox';
import type { ACCESS_SCHEMAS } from '../../../contract/index.js';
import { askJson } from '../../api/ask-json.js';
import { useDo } from '../../api/use-do.js';
import { useReading } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { EndDialog } from './end-dialog.js';
import { TokenDialog } from './token-dialog.js';

type Tokens = Static<typeof ACCESS_SCHEMAS.tokens>;
type Token = Tokens['items'][number];

/** Keys for scripts: made, shown once, ended. */
export function TokensPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const people = useShopView().data?.people ?? {};
  const now = useReading('now', {}).data?.now ?? '';
  const revoke = useDo('revoke-token');
  const [isMaking, setMaking] = useState(false);
  const [ending, setEnding] = useState<Token>();
  const tokens = useQuery({ queryKey: ['tokens'], queryFn: () => askJson<Tokens>('/tokens') });
  const { tokens: said } = words;
  const stateOf = ({ revokedAt, expiresAt }: Token) => {
    if (revokedAt !== null) return <StateMark tone="stopped">{said.ended}</StateMark>;
    const isOver = expiresAt !== null && expiresAt <= now;
    return <StateMark tone={isOver ? 'stopped' : 'done'}>{isOver ? said.over : said.open}</StateMark>;
  };
  const columns: readonly SheetColumn<Token>[] = [
    { heading: said.columns.name, names: true, cell: ({ name }) => name },
    { heading: said.columns.person, cell: ({ personId }) => people[personId] ?? words.none },
    { heading: said.columns.scopes, wide: true, cell: ({ scopes }) => scopes.join(', ') },
    {
      heading: said.columns.until,
      cell: ({ expiresAt }) => (expiresAt === null ? said.forever : figures.date(expiresAt.slice(0, 10))),
    },
    { heading: said.columns.state, cell: stateOf },
    {
      heading: words.actions,
      cell: (token) =>
        token.revokedAt === null && <Button onClick={() => setEnding(token)}>{said.revoke}</Button>,
    },
  ];
  return (
    <div className={desk.stack}>
      <div>
        <Button kind="main" onClick={() => setMaking(true)}>
          {said.make}
        </Button>
      </div>
      <Asked question={tokens} what={words.parts.tokens}>
        {({ items }) =>
          items.length === 0 ? (
            <p className="quiet">{said.none}</p>
          ) : (
            <SheetTable
              caption={words.parts.tokens}
              columns={columns}
              rows={items}
              rowKey={({ id }) => id}
              middle
            />
          )
        }
      </Asked>
      {isMaking && <TokenDialog now={now} people={people} onClose={() => setMaking(false)} />}
      {ending && (
        <EndDialog
          id={ending.id}
          title={said.revokeTitle(ending.name)}
          lead={said.revokeLead}
          action={said.revoke}
          done={said.revoked(ending.name)}
          doing={revoke}
          onClose={() => setEnding(undefined)}
        />
      )}
    </div>
  );
}
