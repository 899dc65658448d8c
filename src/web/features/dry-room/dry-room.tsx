import { useState } from 'react';
import { Asked } from '../../parts/asked.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { Picture } from '../../parts/picture.js';
import { RoomTitle } from '../../parts/room-title.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { ClimateChart } from './climate-chart.js';
import { ClimateTable } from './climate-table.js';
import { ReadingForm } from './reading-form.js';
import { lastOf, useDryRoomLimits, useDryRoomReadings } from './use-dry-room.js';

/** The climate where wire and strings lie: a reading, and how it was lately. */
export function DryRoom() {
  const words = useWords(DRY_ROOM_WORDS);
  const { question, readings } = useDryRoomReadings();
  const { limits, isOwn } = useDryRoomLimits();
  const [chosen, setChosen] = useState<string>();
  const rooms = [...new Set(readings.map(({ room }) => room))];
  const room = chosen ?? rooms[0] ?? words.firstRoom;
  const shown = lastOf(readings, room);
  return (
    <>
      <RoomTitle title={words.title} />
      <div className={styles.part}>
        <ReadingForm rooms={rooms} room={room} onRoom={setChosen} limits={limits} isOwn={isOwn} />
      </div>
      <Asked question={question} what={words.what}>
        {() => (
          <div className={styles.part}>
            {shown.length === 0 ? (
              <Empty what={words.none} />
            ) : (
              <Picture
                title={words.chart(shown.length, room)}
                picture={<ClimateChart readings={shown} room={room} limits={limits} />}
                table={<ClimateTable readings={shown} limits={limits} />}
              />
            )}
          </div>
        )}
      </Asked>
    </>
  );
}
