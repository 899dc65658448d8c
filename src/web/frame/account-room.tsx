import { PasswordInput, SegmentedControl, TextInput, useMantineColorScheme } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { Static } from 'typebox';
import {
  type ACCESS_SCHEMAS,
  LEAST_PASSWORD,
  LENGTH_UNITS,
  type ProblemDetails,
  PULL_UNITS,
} from '../../contract/index.js';
import { askJson } from '../api/ask-json.js';
import { Refused } from '../api/client.js';
import { useMe, useSession } from '../api/session.js';
import { useDo } from '../api/use-do.js';
import { Asked } from '../parts/asked.js';
import { Button } from '../parts/button.js';
import { useTell } from '../parts/notices.js';
import { ProblemBox } from '../parts/problem-box.js';
import { RoomTitle } from '../parts/room-title.js';
import { useFigures } from '../sight/figures.js';
import { useSight } from '../sight/sight.js';
import { ACCESS_WORDS, FRAME_WORDS } from '../words/frame.js';
import { useWords } from '../words/language.js';
import styles from './account-room.module.css';

/** Oneself: how one sees figures, password and PIN, where one is signed in. */
export function AccountRoom() {
  const words = useWords(ACCESS_WORDS);
  const frame = useWords(FRAME_WORDS);
  const { person, session } = useMe();
  const { signOut } = useSession();
  return (
    <div className={styles.account}>
      <div className={styles.head}>
        <div>
          <RoomTitle title={person.name} />
          <p className="quiet">{words.roles(person.roles.join(', '))}</p>
        </div>
        <Button onClick={() => void signOut()}>{frame.signOut}</Button>
      </div>
      <SightPart />
      {session?.via === 'pin' ? <p>{words.needsPassword}</p> : <SecretsPart />}
      {session?.via !== 'pin' && <SessionsPart />}
    </div>
  );
}

function SightPart() {
  const words = useWords(ACCESS_WORDS);
  const { sight, choose } = useSight();
  const figures = useFigures();
  const { colorScheme, setColorScheme } = useMantineColorScheme({ keepTransitions: true });
  return (
    <section className={styles.part}>
      <h2>{words.figures}</h2>
      <div className={styles.choices}>
        <SegmentedControl
          aria-label={words.pullUnit}
          data={[...PULL_UNITS]}
          value={sight.pull}
          onChange={(pull) => choose({ pull: pull as typeof sight.pull })}
        />
        <SegmentedControl
          aria-label={words.lengthUnit}
          data={[...LENGTH_UNITS]}
          value={sight.length}
          onChange={(length) => choose({ length: length as typeof sight.length })}
        />
        <SegmentedControl
          aria-label={words.scheme}
          data={(['auto', 'light', 'dark'] as const).map((value) => ({ value, label: words.schemes[value] }))}
          value={colorScheme}
          onChange={(scheme) => setColorScheme(scheme as typeof colorScheme)}
        />
      </div>
      <TextInput
        label={words.customs}
        description={words.customsHint}
        value={sight.locale}
        maxLength={35}
        onChange={(event) => choose({ locale: event.currentTarget.value })}
      />
      <p>{words.customsShow(figures.date('2027-03-01'), figures.number(1234.5, 1))}</p>
    </section>
  );
}

function SecretsPart() {
  const words = useWords(ACCESS_WORDS);
  const tell = useTell();
  const [now, setNow] = useState('');
  const [next, setNext] = useState('');
  const [pin, setPin] = useState('');
  const { problem, send } = useSecret();
  const changed = (said: string) => {
    setNow('');
    setNext('');
    setPin('');
    tell({ text: said });
  };
  return (
    <section className={styles.part}>
      <h2>{words.changePassword}</h2>
      <PasswordInput
        label={words.passwordNow}
        autoComplete="current-password"
        value={now}
        onChange={(event) => setNow(event.currentTarget.value)}
      />
      <form
        className={styles.row}
        onSubmit={(event) =>
          send(event, '/change-password', { password: now, newPassword: next }, () =>
            changed(words.passwordChanged),
          )
        }
      >
        <PasswordInput
          label={words.newPassword}
          autoComplete="new-password"
          description={words.tooShort(LEAST_PASSWORD)}
          value={next}
          onChange={(event) => setNext(event.currentTarget.value)}
        />
        <Button type="submit" disabled={now === '' || next.length < LEAST_PASSWORD}>
          {words.changePassword}
        </Button>
      </form>
      <form
        className={styles.row}
        onSubmit={(event) => send(event, '/set-pin', { password: now, pin }, () => changed(words.pinIsSet))}
      >
        <PasswordInput
          label={words.pinTitle}
          description={words.pinHint}
          inputMode="numeric"
          autoComplete="off"
          value={pin}
          onChange={(event) => setPin(event.currentTarget.value)}
        />
        <Button type="submit" disabled={now === '' || !/^\d{4,8}$/.test(pin)}>
          {words.setPin}
        </Button>
      </form>
      <ProblemBox problem={problem} />
    </section>
  );
}

function useSecret() {
  const [problem, setProblem] = useState<ProblemDetails>();
  const send = (event: FormEvent, path: string, body: object, done: () => void) => {
    event.preventDefault();
    askJson(path, { method: 'POST', body })
      .then(() => {
        setProblem(undefined);
        done();
      })
      .catch((thrown: unknown) => {
        if (!(thrown instanceof Refused)) throw thrown;
        setProblem(thrown.problem);
      });
  };
  return { problem, send };
}

type Sessions = Static<typeof ACCESS_SCHEMAS.sessions>;

function SessionsPart() {
  const words = useWords(ACCESS_WORDS);
  const { session } = useMe();
  const figures = useFigures();
  const tell = useTell();
  const revoke = useDo('revoke-session');
  const sessions = useQuery({ queryKey: ['sessions'], queryFn: () => askJson<Sessions>('/sessions') });
  return (
    <section className={styles.part}>
      <h2>{words.sessions}</h2>
      <Asked question={sessions} what={words.sessions}>
        {({ items }) => (
          <ul className={styles.sessions}>
            {items.map(({ id, via, createdAt }) => (
              <li key={id} className={styles.row}>
                <p>{words.sessionSince(figures.moment(createdAt), words.vias[via])}</p>
                {id === session?.id ? (
                  <p className="quiet">{words.thisOne}</p>
                ) : (
                  <Button
                    onClick={() =>
                      void revoke.run({ id }).then(({ ok }) => {
                        if (ok) tell({ text: words.ended });
                      })
                    }
                  >
                    {words.end}
                  </Button>
                )}
              </li>
            ))}
          </ul>
        )}
      </Asked>
      <ProblemBox problem={revoke.problem} />
    </section>
  );
}
