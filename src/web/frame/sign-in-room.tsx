import { PasswordInput, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { ProblemDetails } from '../../contract/index.js';
import { askJson } from '../api/ask-json.js';
import { Refused } from '../api/client.js';
import { type Device, useSession } from '../api/session.js';
import { Button } from '../parts/button.js';
import { ProblemBox } from '../parts/problem-box.js';
import { RoomTitle } from '../parts/room-title.js';
import { ACCESS_WORDS } from '../words/frame.js';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import styles from './sign-in-room.module.css';

/** The way in: by name and password at a desk, by a touch and a PIN on a tablet of the shop. */
export function SignInRoom() {
  const { standing, askAgain } = useSession();
  const words = useWords(ACCESS_WORDS);
  const parts = useWords(PARTS_WORDS);
  const [byPassword, setByPassword] = useState(false);
  if (standing.kind === 'no-answer') {
    return (
      <>
        <RoomTitle title={words.noAnswer} />
        <p>{words.noAnswerMore}</p>
        <Button kind="main" onClick={askAgain}>
          {parts.askAgain}
        </Button>
      </>
    );
  }
  if (standing.kind !== 'nobody') return <RoomTitle title="Tautwork" />;
  const { device } = standing;
  if (device && device.people.length > 0 && !byPassword) {
    return <ByPin device={device} onPassword={() => setByPassword(true)} />;
  }
  return <ByPassword onPin={device ? () => setByPassword(false) : undefined} />;
}

function ByPassword({ onPin }: { readonly onPin: (() => void) | undefined }) {
  const words = useWords(ACCESS_WORDS);
  const { busy, problem, ask } = useWayIn();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  return (
    <form className={styles.form} onSubmit={(event) => ask(event, '/sign-in', { name, password })}>
      <RoomTitle title={words.title} />
      <TextInput
        label={words.name}
        autoComplete="username"
        required
        value={name}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <PasswordInput
        label={words.password}
        autoComplete="current-password"
        required
        value={password}
        onChange={(event) => setPassword(event.currentTarget.value)}
      />
      <ProblemBox problem={problem} />
      <Button kind="main" type="submit" busy={busy}>
        {words.enter}
      </Button>
      <p className="quiet small">{words.forgotten}</p>
      {onPin && (
        <Button kind="bare" onClick={onPin}>
          {words.withPin}
        </Button>
      )}
    </form>
  );
}

function ByPin({ device, onPassword }: { readonly device: Device; readonly onPassword: () => void }) {
  const words = useWords(ACCESS_WORDS);
  const { busy, problem, ask } = useWayIn();
  const [person, setPerson] = useState<Device['people'][number]>();
  const [pin, setPin] = useState('');
  if (!person) {
    return (
      <>
        <RoomTitle title={words.whoIsIt} />
        <p className="quiet">{words.deviceIs(device.device.name)}</p>
        <div className={styles.people}>
          {device.people.map((each) => (
            <Button key={each.id} size="floor" onClick={() => setPerson(each)}>
              {each.name}
            </Button>
          ))}
        </div>
        <Button kind="bare" onClick={onPassword}>
          {words.withPassword}
        </Button>
      </>
    );
  }
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        ask(event, '/pin-sign-in', { personId: person.id, pin });
        setPin('');
      }}
    >
      <RoomTitle title={person.name} />
      <PasswordInput
        label={words.pin}
        inputMode="numeric"
        autoComplete="off"
        size="lg"
        required
        data-autofocus
        value={pin}
        onChange={(event) => setPin(event.currentTarget.value)}
      />
      <ProblemBox problem={problem} />
      <Button kind="main" size="floor" type="submit" busy={busy}>
        {words.enter}
      </Button>
      <Button kind="bare" onClick={() => setPerson(undefined)}>
        {words.someoneElse}
      </Button>
    </form>
  );
}

/** Sends what was typed; whoever is let in is so for the whole page. */
export function useWayIn(then?: () => void) {
  const { entered } = useSession();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<ProblemDetails>();
  const ask = (event: FormEvent, path: string, body: object) => {
    event.preventDefault();
    setBusy(true);
    askJson(path, { method: 'POST', body })
      .then(() => {
        entered();
        then?.();
      })
      .catch((thrown: unknown) => {
        if (!(thrown instanceof Refused)) throw thrown;
        setProblem(thrown.problem);
      })
      .finally(() => setBusy(false));
  };
  return { busy, problem, ask };
}
