import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import type { PersonRecord } from './person-record.js';
import { ShownOnce } from './shown-once.js';

/** The whole one-time link: its secret stands after the #, which a browser never sends. */
export const signInLink = (secret: string): string => `${window.location.origin}/first-sign-in#${secret}`;

interface LinkDialogProps {
  readonly person: PersonRecord;
  readonly onClose: () => void;
}

/** A new one-time link for a person, made and shown once. */
export function LinkDialog({ person, onClose }: LinkDialogProps) {
  const { people: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const make = useDo('make-sign-in-link');
  const [link, setLink] = useState<{ readonly secret: string; readonly expiresAt: string }>();
  const { name } = person.body;
  const send = async () => {
    const answer = await make.run({ personId: person.id });
    if (answer.ok) setLink(answer.value.link);
  };
  return (
    <Dialog
      open
      title={words.linkTitle(name)}
      onClose={onClose}
      actions={
        link ? undefined : (
          <Button kind="main" busy={make.busy} onClick={() => void send()}>
            {words.linkMake}
          </Button>
        )
      }
    >
      {link ? (
        <>
          <ShownOnce secret={signInLink(link.secret)} lead={words.linkLead} />
          <p className="quiet">{words.linkUntil(figures.moment(link.expiresAt))}</p>
        </>
      ) : (
        <p>{words.linkMakeLead(name)}</p>
      )}
      <ProblemBox problem={make.problem} />
    </Dialog>
  );
}
