import { Textarea, TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { RoomTitle } from '../../parts/room-title.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { AboutFields, aboutAsSent, NOTHING_KNOWN } from './about-fields.js';
import { useKept } from './use-kept.js';

const BLANK = { id: '', player: '', text: '', ...NOTHING_KNOWN };

/** A letter is written down. What is typed stays until it is. */
export function RegisterRoom() {
  const { form: words } = useWords(COMPLAINTS_WORDS);
  const { draft, setDraft, forget } = useKept('complaint', BLANK);
  const register = useDo('register-complaint');
  const tell = useTell();
  const navigate = useNavigate();
  const change = (change: Partial<typeof BLANK>) =>
    setDraft((before) => ({ ...before, id: before.id || freshId(), ...change }));
  const isWhole = draft.player.trim() !== '' && draft.text.trim() !== '' && draft.fault !== '';
  const keep = async () => {
    const { id, player, text } = draft;
    const about = aboutAsSent(draft, 'other');
    const done = await register.run({ id, player: player.trim(), text: text.trim(), ...about });
    if (!done.ok) return;
    forget();
    tell({ text: words.registered(player.trim()) });
    await navigate({ to: '/complaints/$id', params: { id }, replace: true });
  };
  return (
    <div className={desk.room}>
      <div>
        <RoomTitle title={words.title} />
        <p className={desk.lead}>{words.lead}</p>
      </div>
      <section aria-label={words.title} className={desk.stack}>
        <div className={desk.narrowField}>
          <TextInput
            label={words.player}
            value={draft.player}
            onChange={(event) => change({ player: event.currentTarget.value })}
          />
        </div>
        <Textarea
          label={words.letter}
          size="md"
          autosize
          minRows={4}
          value={draft.text}
          onChange={(event) => change({ text: event.currentTarget.value })}
        />
      </section>
      <section aria-labelledby="about" className={desk.part}>
        <h2 id="about">{words.about}</h2>
        <AboutFields about={draft} change={change} />
      </section>
      <ProblemBox problem={register.problem} />
      <div className={desk.row}>
        <Button kind="main" busy={register.busy} disabled={!isWhole} onClick={() => void keep()}>
          {words.keep}
        </Button>
        {draft.id !== '' && <Button onClick={forget}>{words.discard}</Button>}
        <p className="quiet small">{words.kept}</p>
      </div>
    </div>
  );
}
