import { Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { useState } from 'react';
import { type Permission, TOKEN_SCOPES } from '../../../contract/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useMe } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { ShownOnce } from './shown-once.js';

interface TokenDialogProps {
  /** The shop's moment, from which its life is counted. */
  readonly now: string;
  readonly people: Readonly<Record<string, string>>;
  readonly onClose: () => void;
}

const A_DAY_MS = 86_400_000;

/** A new token for a script; the whole of it is shown this once. */
export function TokenDialog({ now, people, onClose }: TokenDialogProps) {
  const { tokens: words } = useWords(SHOP_WORDS);
  const { person } = useMe();
  const make = useDo('make-token');
  const [id] = useState(freshId);
  const [name, setName] = useState('');
  const [personId, setPersonId] = useState(person.id);
  const [scopes, setScopes] = useState<readonly Permission[]>([]);
  const [days, setDays] = useState('90');
  const [secret, setSecret] = useState<string>();
  const send = async () => {
    const expiresAt = new Date(Date.parse(now) + Number(days) * A_DAY_MS).toISOString();
    const answer = await make.run({
      id,
      personId,
      name: name.trim(),
      scopes: [...scopes],
      ...(days === '' ? {} : { expiresAt }),
    });
    if (answer.ok) setSecret(answer.value.secret);
  };
  if (secret !== undefined) {
    return (
      <Dialog open title={words.made} onClose={onClose}>
        <ShownOnce secret={secret} lead={words.madeLead} />
      </Dialog>
    );
  }
  return (
    <Dialog
      open
      title={words.makeTitle}
      onClose={onClose}
      actions={
        <Button
          kind="main"
          busy={make.busy}
          disabled={name.trim() === '' || scopes.length === 0}
          onClick={() => void send()}
        >
          {words.makeDo}
        </Button>
      }
    >
      <div className={desk.fields}>
        <TextInput label={words.name} value={name} onChange={(event) => setName(event.currentTarget.value)} />
        <NativeSelect
          label={words.person}
          value={personId}
          data={Object.entries(people).map(([value, label]) => ({ value, label }))}
          onChange={(event) => setPersonId(event.currentTarget.value)}
        />
        <NativeSelect
          label={words.until}
          value={days}
          data={['30', '90', '365', ''].map((value) => ({ value, label: words.lives[value] ?? value }))}
          onChange={(event) => setDays(event.currentTarget.value)}
        />
      </div>
      <fieldset className={desk.bare}>
        <legend className={desk.label}>{words.scopes}</legend>
        <p className="quiet small">{words.scopesHint}</p>
        <div className={desk.choices}>
          {TOKEN_SCOPES.map((scope) => (
            <Checkbox
              key={scope}
              label={scope}
              checked={scopes.includes(scope)}
              onChange={(event) =>
                setScopes(
                  event.currentTarget.checked ? [...scopes, scope] : scopes.filter((each) => each !== scope),
                )
              }
            />
          ))}
        </div>
      </fieldset>
      <ProblemBox problem={make.problem} />
    </Dialog>
  );
}
