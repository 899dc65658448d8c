import { useQuery } from '@tanstack/react-query';
import { room } from '../../frame/room.js';
import { Asked } from '../../parts/asked.js';
import { Lost } from '../../parts/lost.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';

/** States that take the whole room. */
export const ROOM_STATES = ['waiting', 'failed', 'forbidden', 'lost'] as const;
type State = (typeof ROOM_STATES)[number];

/** A permission that nobody has: there is none of that name. */
const ForNobody = room('nobody.ever' as Parameters<typeof room>[0], () => null);

export function RoomState({ state }: { readonly state: State }) {
  if (state === 'forbidden') return <ForNobody />;
  if (state === 'lost') return <Lost />;
  return <Unanswered key={state} fails={state === 'failed'} />;
}

function Unanswered({ fails }: { readonly fails: boolean }) {
  const words = useWords(LOOK_WORDS);
  const question = useQuery({
    queryKey: ['look', fails],
    queryFn: () => (fails ? Promise.reject(new Error(words.problem)) : new Promise<string>(() => {})),
  });
  return (
    <Asked question={question} what={words.title}>
      {(answer) => answer}
    </Asked>
  );
}
