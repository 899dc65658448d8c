import { Link, useNavigate } from '@tanstack/react-router';
import { type ReactNode, useState } from 'react';
import { stringKeyInWords } from '../../../contract/index.js';
import { Button, buttonClass } from '../../parts/button.js';
import { RoomTitle } from '../../parts/room-title.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import { GiveUpPack } from './give-up-pack.js';
import { judgeScan, type WrongScan } from './judge-scan.js';
import { NextPanel } from './next-panel.js';
import { OrderPacks } from './order-packs.js';
import type { OrderDue } from './orders-due.js';
import { PackLabels } from './pack-labels.js';
import styles from './pack-part.module.css';
import { PackProgress } from './pack-progress.js';
import type { Pack, Packing } from './packing-roll.js';
import { nextPlace, placesOf, type Source } from './places.js';
import { PlacesPart } from './places-part.js';
import { SendOrder } from './send-order.js';
import { StopPanel } from './stop-panel.js';
import { useFocusIfLost } from './use-focus-if-lost.js';
import { useHands } from './use-hands.js';

interface PackPartProps {
  readonly pack: Pack;
  readonly due: OrderDue;
  readonly packing: Packing;
}

/** A set in the hand: string after string from its bin into the pack, each checked; then sealed. */
export function PackPart({ pack, due, packing }: PackPartProps) {
  const words = useWords(PACKING_WORDS);
  const { accepted, refused } = useSound();
  const hands = useHands(pack);
  const navigate = useNavigate();
  const [chosen, setChosen] = useState<number>();
  const [stop, setStop] = useState<{ readonly text: string; readonly wrong: WrongScan }>();
  const [told, setTold] = useState('');
  const isOpen = pack.state === 'open';
  const places = placesOf(pack, packing);
  const isChosen = places.some(({ wanted, picked }) => wanted.position === chosen && !picked);
  const nextPosition = isOpen ? (isChosen ? chosen : nextPlace(pack, packing)?.position) : undefined;
  const place = places.find(({ wanted }) => wanted.position === nextPosition);

  const isFull = isOpen && !place;

  const take = (position: number, lotId: string, binId: string) => {
    accepted();
    setStop(undefined);
    setChosen(undefined);
    const { stringKey = '' } = pack.body.wanted.find((each) => each.position === position) ?? {};
    setTold(words.tookHeard(position, stringKeyInWords(stringKey).short));
    void hands.pick({ position, lotId, binId });
  };
  const seal = () => {
    accepted();
    setStop(undefined);
    setTold(words.sealed);
    void hands.seal();
  };
  const halt = (text: string, wrong: WrongScan) => {
    refused();
    setTold('');
    setStop({ text, wrong });
  };
  const scan = (text: string) => {
    const meant = judgeScan(text, { pack, place: place?.wanted, packing });
    if (meant.kind === 'take') return take(meant.position, meant.lotId, meant.binId);
    if (meant.kind === 'wrong') return halt(text, meant);
    if (meant.kind === 'other-pack') return navigate({ to: '/packing', search: { pack: meant.packId } });
    if (isOpen && !place) return seal();
    if (isOpen)
      return halt(text, { because: 'not-full', count: places.filter(({ picked }) => !picked).length });
  };

  return (
    <>
      <div className={styles.head}>
        <PackTitle pack={pack} due={due} />
        <PackProgress places={places} next={nextPosition} />
      </div>
      <OrderPacks due={due} packId={pack.id} />
      <div className={styles.beside}>
        <div className={styles.doing}>
          {stop && (
            <StopPanel
              text={stop.text}
              wrong={stop.wrong}
              place={place}
              onUnderstood={() => setStop(undefined)}
            />
          )}
          {!stop && place && (
            <NextPanel
              place={place}
              onTake={({ lying, bin }: Source) => take(place.wanted.position, lying.lotId, bin.id)}
            />
          )}
          {!stop && isFull && (
            <Complete onSeal={seal}>
              <PackLabels pack={pack} packs={due.packs.length} />
            </Complete>
          )}
          {!isOpen && <Done pack={pack} due={due} />}
          <p role="status" className={styles.told}>
            {told}
          </p>
          {isOpen && (
            <ScanBox label={words.scan} hint={words.scanInPack} onScan={(text) => void scan(text)} />
          )}
        </div>
        <PlacesPart
          places={places}
          next={nextPosition}
          bins={packing.bins}
          isOpen={isOpen}
          onNext={setChosen}
          onLayBack={(position, bin) => {
            setTold(words.laidBack(position, bin));
            void hands.unpick(position);
          }}
        />
      </div>
      <div className={styles.foot}>
        <Link to="/packing" search={{}} className={buttonClass('plain', 'floor')}>
          {words.backToRoll}
        </Link>
        {isOpen && !isFull && <PackLabels pack={pack} packs={due.packs.length} />}
        {pack.state !== 'shipped' && <GiveUpPack pack={pack} />}
      </div>
    </>
  );
}

function PackTitle({ pack, due }: Pick<PackPartProps, 'pack' | 'due'>) {
  const words = useWords(PACKING_WORDS);
  const { date } = useFigures();
  const { number, player, note, due: day } = due.order.body;
  const at = due.packs.findIndex(({ id }) => id === pack.id) + 1;
  return (
    <div>
      <RoomTitle title={words.packTitle(pack.body.setName, player)} />
      <p className={styles.lead}>
        {words.packOf(number, at, due.sets)} · {words.due(date(day))}
      </p>
      {note !== '' && <p>{words.note(note)}</p>}
    </div>
  );
}

function Complete({ onSeal, children }: { readonly onSeal: () => void; readonly children: ReactNode }) {
  const words = useWords(PACKING_WORDS);
  const heading = useFocusIfLost();
  return (
    <section aria-labelledby="complete" className={styles.complete}>
      <h2 ref={heading} id="complete" tabIndex={-1} className={styles.large}>
        {words.complete}
      </h2>
      <p>{words.completeMore}</p>
      <div className={styles.row}>
        <Button kind="main" size="floor" onClick={onSeal}>
          {words.seal}
        </Button>
        {children}
      </div>
    </section>
  );
}

/** A pack that is closed, and what comes after it. */
function Done({ pack, due }: { readonly pack: Pack; readonly due: OrderDue }) {
  const words = useWords(PACKING_WORDS);
  const { moment } = useFigures();
  const { sealedAt } = pack.body;
  const navigate = useNavigate();
  const after = due.packs.find(({ state }) => state === 'open');
  const heading = useFocusIfLost();
  return (
    <section aria-labelledby="done" className={styles.complete}>
      <h2 ref={heading} id="done" tabIndex={-1} className={styles.large}>
        <StateMark tone="done">{pack.state === 'shipped' ? words.sent : words.sealed}</StateMark>
      </h2>
      {sealedAt !== undefined && <p>{words.sealedMore(moment(sealedAt))}</p>}
      <div className={styles.row}>
        {after && (
          <Link to="/packing" search={{ pack: after.id }} className={buttonClass('main', 'floor')}>
            {words.nextPack}
          </Link>
        )}
        {/* An order that is sent is no more to be packed: the next one is among the others. */}
        <SendOrder due={due} onSent={() => void navigate({ to: '/packing', search: {} })} />
        <PackLabels pack={pack} packs={due.packs.length} />
      </div>
    </section>
  );
}
