import { PasswordInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { LEAST_PASSWORD } from '../../contract/index.js';
import { Button } from '../parts/button.js';
import { ProblemBox } from '../parts/problem-box.js';
import { RoomTitle } from '../parts/room-title.js';
import { ACCESS_WORDS } from '../words/frame.js';
import { useWords } from '../words/language.js';
import { useWayIn } from './sign-in-room.js';
import styles from './sign-in-room.module.css';

/** Where a one-time link leads: its secret stands after the #, which no server ever sees until it is sent here. */
export function FirstSignInRoom() {
  const words = useWords(ACCESS_WORDS);
  const navigate = useNavigate();
  const [secret] = useState(() => window.location.hash.slice(1));
  const [password, setPassword] = useState('');
  const [again, setAgain] = useState('');
  const { busy, problem, ask } = useWayIn(() => void navigate({ to: '/', replace: true }));
  if (secret === '') {
    return (
      <>
        <RoomTitle title={words.firstTitle} />
        <p>{words.firstNoSecret}</p>
      </>
    );
  }
  const isShort = password !== '' && password.length < LEAST_PASSWORD;
  const differs = again !== '' && again !== password;
  return (
    <form
      className={styles.form}
      onSubmit={(event) => ask(event, '/set-password', { link: secret, password })}
    >
      <RoomTitle title={words.firstTitle} />
      <p>{words.firstLead}</p>
      <PasswordInput
        label={words.newPassword}
        autoComplete="new-password"
        required
        value={password}
        error={isShort && words.tooShort(LEAST_PASSWORD)}
        onChange={(event) => setPassword(event.currentTarget.value)}
      />
      <PasswordInput
        label={words.again}
        autoComplete="new-password"
        required
        value={again}
        error={differs && words.notSame}
        onChange={(event) => setAgain(event.currentTarget.value)}
      />
      <ProblemBox problem={problem} />
      <Button
        kind="main"
        type="submit"
        busy={busy}
        disabled={password !== again || password.length < LEAST_PASSWORD}
      >
        {words.setPassword}
      </Button>
    </form>
  );
}
