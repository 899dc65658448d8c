import { useState } from 'react';
import { Button } from '../../parts/button.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import { judgeScan } from '../packing/judge-scan.js';
import { NextPanel } from '../packing/next-panel.js';
import { PackProgress } from '../packing/pack-progress.js';
import { nextPlace, placesOf } from '../packing/places.js';
import { anOrder, aPack, aPacking, WOUND_26 } from '../packing/small-packing.js';
import { StopPanel } from '../packing/stop-panel.js';
import { Part } from './part.js';

const PICKED = [{ position: 3, stringKey: WOUND_26, lotId: '2026-04-03 lot 2', binId: 'bin 3' }];
const PACKING = aPacking({
  orders: [anOrder('R-1', '2026-04-16')],
  packs: [aPack('R-1', { picked: PICKED })],
});

/** What is read from a metre, and the loudest thing that the page has. */
export function FloorPart() {
  const words = useWords(LOOK_WORDS);
  const [isUnderstood, setUnderstood] = useState(false);
  const pack = PACKING.packs[0]!;
  const places = placesOf(pack, PACKING);
  const next = nextPlace(pack, PACKING);
  const place = places.find(({ wanted }) => wanted === next)!;
  const scan = judgeScan('bin 3', { pack, place: next, packing: PACKING });
  return (
    <Part title={words.floor}>
      <PackProgress places={places} next={next?.position} />
      <NextPanel place={place} onTake={() => {}} />
      {isUnderstood ? (
        <div>
          <Button onClick={() => setUnderstood(false)}>{words.scan}</Button>
        </div>
      ) : (
        scan.kind === 'wrong' && (
          <StopPanel text="bin 3" wrong={scan} place={place} onUnderstood={() => setUnderstood(true)} />
        )
      )}
    </Part>
  );
}
