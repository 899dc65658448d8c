import { useSearch } from '@tanstack/react-router';
import { FieldsPart } from '../features/look/fields-part.js';
import { FiguresPart } from '../features/look/figures-part.js';
import { FloorPart } from '../features/look/floor-part.js';
import styles from '../features/look/look.module.css';
import { PicturesPart } from '../features/look/pictures-part.js';
import { PressPart } from '../features/look/press-part.js';
import { ROOM_STATES, RoomState } from '../features/look/room-states.js';
import { TellingPart } from '../features/look/telling-part.js';
import { TypePart } from '../features/look/type-part.js';
import { buttonClass } from '../parts/button.js';
import { RoomTitle } from '../parts/room-title.js';
import { useWords } from '../words/language.js';
import { LOOK_WORDS } from '../words/look.js';

/** Every part in every state; or one state of a whole room, which has a title of its own. */
export function LookPage() {
  const words = useWords(LOOK_WORDS);
  const { state: asked } = useSearch({ strict: false });
  const state = ROOM_STATES.find((each) => each === asked);
  if (state) return <RoomState state={state} />;
  return (
    <div className={styles.page}>
      <div>
        <RoomTitle title={words.title} />
        <p className="quiet">{words.lead}</p>
        <nav aria-label={words.wholeRooms} className={styles.row}>
          {ROOM_STATES.map((each) => (
            <a key={each} href={`?state=${each}`} className={buttonClass()}>
              {words.states[each]}
            </a>
          ))}
        </nav>
      </div>
      <TypePart />
      <PressPart />
      <FieldsPart />
      <TellingPart />
      <FiguresPart />
      <PicturesPart />
      <FloorPart />
    </div>
  );
}
