import { useQuery } from '@tanstack/react-query';
import type { Static } from 'typebox';
import type { ACCESS_SCHEMAS } from '../../../contract/index.js';
import { askJson } from '../../api/ask-json.js';
import { useDo } from '../../api/use-do.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import type { PersonRecord } from './person-record.js';

type Sessions = Static<typeof ACCESS_SCHEMAS.sessions>;

interface SessionsDialogProps {
  readonly person: PersonRecord;
  readonly onClose: () => void;
}

/** Where a person is signed in, to be signed out from there or everywhere. */
export function SessionsDialog({ person, onClose }: SessionsDialogProps) {
  const { people: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const revoke = useDo('revoke-session');
  const revokeAll = useDo('revoke-sessions');
  const sessions = useQuery({
    queryKey: ['sessions', person.id],
    queryFn: () => askJson<Sessions>(`/sessions?personId=${person.id}`),
  });
  const { name } = person.body;
  const end = async (id: string) => {
    const answer = await revoke.run({ id });
    if (answer.ok) tell({ text: words.ended });
  };
  const endAll = async () => {
    const answer = await revokeAll.run({ personId: person.id });
    if (answer.ok) tell({ text: words.endedAll(name) });
  };
  return (
    <Dialog open title={words.sessionsTitle(name)} onClose={onClose}>
      <Asked question={sessions} what={words.sessions}>
        {({ items }) =>
          items.length === 0 ? (
            <p className="quiet">{words.sessionsNone}</p>
          ) : (
            <>
              {items.map(({ id, via, createdAt }) => (
                <div key={id} className={desk.head}>
                  <p>{words.session(words.vias[via] ?? via, figures.moment(createdAt))}</p>
                  <Button busy={revoke.busy} onClick={() => void end(id)}>
                    {words.end}
                  </Button>
                </div>
              ))}
              <div>
                <Button kind="grave" busy={revokeAll.busy} onClick={() => void endAll()}>
                  {words.endAll}
                </Button>
              </div>
            </>
          )
        }
      </Asked>
      <ProblemBox problem={revoke.problem ?? revokeAll.problem} />
    </Dialog>
  );
}
