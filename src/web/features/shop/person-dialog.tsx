import { Checkbox, TextInput } from '@mantine/core';
import { useState } from 'react';
import { ROLES, type Role } from '../../../contract/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { signInLink } from './link-dialog.js';
import type { PersonRecord } from './person-record.js';
import { ShownOnce } from './shown-once.js';

interface PersonDialogProps {
  /** Left out for somebody new. */
  readonly person?: PersonRecord;
  readonly onClose: () => void;
}

/** A person's name and roles. Of somebody new the link for the first sign-in is shown, this once. */
export function PersonDialog({ person, onClose }: PersonDialogProps) {
  const { people: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const invite = useDo('invite-person');
  const change = useDo('change-person');
  const [id] = useState(person?.id ?? freshId);
  const [name, setName] = useState(person?.body.name ?? '');
  const [roles, setRoles] = useState<readonly Role[]>(person?.body.roles ?? []);
  const [link, setLink] = useState<{ readonly secret: string; readonly expiresAt: string }>();
  const isWhole = name.trim() !== '' && roles.length > 0;
  const input = { id, name: name.trim(), roles: [...roles] };
  const send = async () => {
    if (person) {
      const answer = await change.run({ ...input, expectedVersion: person.version });
      if (!answer.ok) return;
      tell({ text: words.saved(input.name) });
      onClose();
      return;
    }
    const answer = await invite.run(input);
    if (answer.ok) setLink(answer.value.link);
  };
  if (link) {
    return (
      <Dialog open title={words.linkTitle(name.trim())} onClose={onClose}>
        <ShownOnce secret={signInLink(link.secret)} lead={words.linkLead} />
        <p className="quiet">{words.linkUntil(figures.moment(link.expiresAt))}</p>
      </Dialog>
    );
  }
  return (
    <Dialog
      open
      title={person ? words.changeTitle(person.body.name) : words.invite}
      onClose={onClose}
      actions={
        <Button kind="main" busy={invite.busy || change.busy} disabled={!isWhole} onClick={() => void send()}>
          {person ? words.save : words.inviteDo}
        </Button>
      }
    >
      {!person && <p>{words.inviteLead}</p>}
      <TextInput
        label={words.name}
        value={name}
        maxLength={80}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <fieldset className={desk.bare}>
        <legend className={desk.label}>{words.roles}</legend>
        <div className={desk.row}>
          {ROLES.map((role) => (
            <Checkbox
              key={role}
              label={words.roleNames[role] ?? role}
              checked={roles.includes(role)}
              onChange={(event) =>
                setRoles(
                  event.currentTarget.checked ? [...roles, role] : roles.filter((each) => each !== role),
                )
              }
            />
          ))}
        </div>
      </fieldset>
      <ProblemBox problem={invite.problem ?? change.problem} />
    </Dialog>
  );
}
