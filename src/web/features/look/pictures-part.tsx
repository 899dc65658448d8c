import { useMemo } from 'react';
import { DRY_ROOM_PRACTICE } from '../../../core/stock/index.js';
import { PRIOR_SEAT } from '../../../core/string/index.js';
import { useDay } from '../../api/use-day.js';
import { useAllRecords } from '../../api/use-records.js';
import { Empty } from '../../parts/empty.js';
import { Picture } from '../../parts/picture.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import { ClimateChart } from '../dry-room/climate-chart.js';
import { lanesOf } from '../lanes/lanes-of.js';
import { LanesPicture } from '../lanes/lanes-picture.js';
import { LanesTable } from '../lanes/lanes-table.js';
import { SectionFigure } from '../recipes/section-figure.js';
import { useWays } from '../recipes/use-ways.js';
import { WaysLinked } from '../recipes/ways-linked.js';
import { StringsPicture } from '../set/strings-picture.js';
import { AIR, FAN, HEX_26 } from './drawn-examples.js';
import { Part } from './part.js';

/** Every kind of technical picture. */
export function PicturesPart() {
  const words = useWords(LOOK_WORDS);
  return (
    <>
      <Part title={words.section}>
        <SectionFigure construction={HEX_26} seat={PRIOR_SEAT} />
      </Part>
      <Part title={words.set}>
        <StringsPicture strings={FAN} />
      </Part>
      <LanesOfToday />
      <Part title={words.tradeOff}>
        <WaysOfOne />
      </Part>
      <Part title={words.run}>
        <ClimateChart air={AIR} room={words.room} limits={DRY_ROOM_PRACTICE} />
      </Part>
    </>
  );
}

function LanesOfToday() {
  const words = useWords(LOOK_WORDS);
  const { data: day } = useDay();
  const lanes = day && lanesOf(day, 'day');
  if (!day || !lanes) return <Empty what={words.noLanes} />;
  const stateOf = () => undefined;
  return (
    <Picture
      title={words.lanes}
      picture={
        <LanesPicture
          day={day}
          lanes={lanes}
          scope="day"
          stateOf={stateOf}
          onPutDown={() => {}}
          panel={() => null}
        />
      }
      table={<LanesTable day={day} lanes={lanes.lanes} stateOf={stateOf} />}
    />
  );
}

function WaysOfOne() {
  const { data: wires = [] } = useAllRecords('wire');
  const wish = useMemo(
    () => ({ gauge: '26', material: 'nickel-plated-steel', toleranceM: 2e-5, maxLayers: 1 }) as const,
    [],
  );
  const ways = useWays(wish, wires, { seat: undefined, sounding: undefined });
  if (!ways?.ok) return null;
  return <WaysLinked front={ways.value.front} beaten={ways.value.beaten} now="" seat={undefined} />;
}
