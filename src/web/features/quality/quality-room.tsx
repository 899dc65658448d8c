import { getRouteApi } from '@tanstack/react-router';
import type { QualityView } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import { askedOf, type QualitySearch } from './asked-of.js';
import { FiguresPart } from './figures-part.js';
import { FilterPart } from './filter-part.js';
import { FindingsPart } from './findings-part.js';
import { GroupsPart } from './groups-part.js';
import { HandsPart } from './hands-part.js';
import { RunPart } from './run-part.js';
import { ScrapPart } from './scrap-part.js';
import { SeriesPart } from './series-part.js';

const route = getRouteApi('/quality');

export function QualityRoom() {
  const words = useWords(QUALITY_WORDS);
  const search = route.useSearch();
  const view = useReading('quality', askedOf(search));
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
      </div>
      <Asked question={view} what={words.what}>
        {(seen) => <Seen view={seen} search={search} />}
      </Asked>
    </div>
  );
}

interface SeenProps {
  readonly view: QualityView;
  readonly search: QualitySearch;
}

/** What the numbers say, then what they rest on, down to a single string. */
function Seen({ view, search }: SeenProps) {
  const words = useWords(QUALITY_WORDS);
  return (
    <>
      <FindingsPart view={view} />
      <FilterPart view={view} search={search} />
      {view.runs === 0 ? (
        <Empty what={words.nothing} />
      ) : (
        <>
          <FiguresPart view={view} />
          <SeriesPart view={view} search={search} />
          {search.run !== undefined && <RunPart key={search.run} runId={search.run} />}
          <GroupsPart view={view} search={search} />
          <ScrapPart view={view} />
          {search.mine !== 'yes' && <HandsPart hands={view.hands} />}
        </>
      )}
    </>
  );
}
