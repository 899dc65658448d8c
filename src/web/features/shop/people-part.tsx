import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { useAllRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { LinkDialog } from './link-dialog.js';
import { PersonDialog } from './person-dialog.js';
import type { PersonRecord } from './person-record.js';
import { SessionsDialog } from './sessions-dialog.js';

type Doing =
  | { readonly deed: 'invite' }
  | { readonly deed: 'change' | 'link' | 'sessions'; readonly person: PersonRecord };

/** Who works here: taken in, changed, let go; their links and where they are signed in. */
export function PeoplePart() {
  const words = useWords(SHOP_WORDS);
  const people = useAllRecords('person');
  const [doing, setDoing] = useState<Doing>();
  const { problem, setActive } = useSetActive();
  const close = () => setDoing(undefined);
  return (
    <div className={desk.stack}>
      <div>
        <Button kind="main" onClick={() => setDoing({ deed: 'invite' })}>
          {words.people.invite}
        </Button>
      </div>
      <ProblemBox problem={problem} />
      <Asked question={people} what={words.parts.people}>
        {(all) => (
          <SheetTable
            caption={words.parts.people}
            columns={columnsOf(words, setDoing, setActive)}
            rows={all}
            rowKey={({ id }) => id}
            middle
          />
        )}
      </Asked>
      {doing?.deed === 'invite' && <PersonDialog onClose={close} />}
      {doing?.deed === 'change' && <PersonDialog person={doing.person} onClose={close} />}
      {doing?.deed === 'link' && <LinkDialog person={doing.person} onClose={close} />}
      {doing?.deed === 'sessions' && <SessionsDialog person={doing.person} onClose={close} />}
    </div>
  );
}

/** Letting a person go, and taking one back: each undoes the other. */
function useSetActive() {
  const { people: words } = useWords(SHOP_WORDS);
  const tell = useTell();
  const change = useDo('change-person');
  const setActive = async ({ id, version, body }: PersonRecord, active: boolean) => {
    const answer = await change.run({ id, expectedVersion: version, active });
    if (!answer.ok) return;
    tell({
      text: active ? words.wasTakenBack(body.name) : words.wasLetGo(body.name),
      undo: () => change.run({ id, expectedVersion: answer.value.version, active: !active }),
    });
  };
  return { problem: change.problem, setActive };
}

const columnsOf = (
  { name, state, actions, people: words }: (typeof SHOP_WORDS)['en'],
  onDo: (doing: Doing) => void,
  onSetActive: (person: PersonRecord, active: boolean) => Promise<void>,
): readonly SheetColumn<PersonRecord>[] => [
  { heading: name, names: true, cell: ({ body }) => body.name },
  {
    heading: words.roles,
    cell: ({ body }) => body.roles.map((role) => words.roleNames[role] ?? role).join(', '),
  },
  {
    heading: state,
    cell: ({ body }) => (
      <StateMark tone={body.active ? 'done' : 'stopped'}>
        {body.active ? words.active : words.letGo}
      </StateMark>
    ),
  },
  {
    heading: actions,
    wide: true,
    cell: (person) => (
      <div className={desk.row}>
        <Button onClick={() => onDo({ deed: 'change', person })}>{words.change}</Button>
        {person.body.active && (
          <>
            <Button onClick={() => onDo({ deed: 'link', person })}>{words.link}</Button>
            <Button onClick={() => onDo({ deed: 'sessions', person })}>{words.sessions}</Button>
          </>
        )}
        <Button kind="bare" onClick={() => void onSetActive(person, !person.body.active)}>
          {person.body.active ? words.letGoDo : words.takeBack}
        </Button>
      </div>
    ),
  },
];
