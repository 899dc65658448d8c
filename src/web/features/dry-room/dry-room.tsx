import { NativeSelect } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { DryRoomAir } from '../../../contract/index.js';
import { DRY_ROOM_PRACTICE } from '../../../core/stock/index.js';
import { Asked } from '../../parts/asked.js';
import { buttonClass } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { Picture } from '../../parts/picture.js';
import { RoomTitle } from '../../parts/room-title.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { ClimateChart } from './climate-chart.js';
import { ClimateTable } from './climate-table.js';
import { ExcursionsPart } from './excursions-part.js';
import { PeriodsPart } from './periods-part.js';
import { ReadingForm } from './reading-form.js';
import { RiskPart } from './risk-part.js';
import { type ShownAir, USUAL_DAYS, useDryRoomAir } from './use-dry-room.js';

const SPANS = [7, USUAL_DAYS, 92, 365] as const;

/** The climate where wire and strings lie: a reading, how it was lately, where it left its limits, and what that means. */
export function DryRoom({ first }: { readonly first: string | undefined }) {
  const words = useWords(DRY_ROOM_WORDS);
  const [chosen, setChosen] = useState(first);
  const [days, setDays] = useState<number>(USUAL_DAYS);
  const { firstRoom } = words;
  const { question, shown, rooms, usualRoom, limits } = useDryRoomAir({ room: chosen, days, firstRoom });
  return (
    <>
      <RoomTitle title={words.title} />
      <div className={styles.part}>
        <ReadingForm
          rooms={rooms}
          room={chosen ?? usualRoom}
          onRoom={setChosen}
          limits={limits ?? DRY_ROOM_PRACTICE}
          isOwn={limits?.basis === 'shop'}
        />
      </div>
      <Asked question={question} what={words.what}>
        {(air) => shown && <Shown air={air} shown={shown} days={days} onDays={setDays} />}
      </Asked>
    </>
  );
}

interface ShownProps {
  readonly air: DryRoomAir;
  readonly shown: ShownAir;
  readonly days: number;
  readonly onDays: (days: number) => void;
}

function Shown({ air, shown, days, onDays }: ShownProps) {
  const words = useWords(DRY_ROOM_WORDS);
  const { room, limits } = air;
  return (
    <>
      <div className={styles.part}>
        <div className={styles.head}>
          <NativeSelect
            label={words.span}
            size="md"
            value={String(days)}
            data={SPANS.map((span) => ({ value: String(span), label: words.spans[span] ?? '' }))}
            onChange={(event) => onDays(Number(event.currentTarget.value))}
          />
          <Link to="/dry-room/import" className={buttonClass()}>
            {words.takeFile}
          </Link>
        </div>
        {shown.readings.length === 0 ? (
          <Empty what={air.rooms.length === 0 ? words.none : words.noneThen} />
        ) : (
          <Picture
            title={words.chart(air.readingCount, room)}
            picture={<ClimateChart air={shown} room={room} limits={limits} />}
            table={<ClimateTable readings={shown.readings} limits={limits} />}
            caption={<p className="quiet small">{words.chartLegend}</p>}
          />
        )}
      </div>
      <div className={styles.part}>
        <RiskPart air={air} />
      </div>
      <div className={styles.part}>
        <ExcursionsPart air={air} />
      </div>
      <div className={styles.part}>
        <PeriodsPart air={air} />
      </div>
    </>
  );
}
