import { stringKeyInWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Bin } from './packing-roll.js';
import type { Place } from './places.js';
import styles from './places-part.module.css';

interface PlacesPartProps {
  readonly places: readonly Place[];
  readonly next: number | undefined;
  readonly bins: readonly Bin[];
  /** Strings go in and out of open packs only. */
  readonly isOpen: boolean;
  readonly onNext: (position: number) => void;
  readonly onLayBack: (position: number, bin: string) => void;
}

type Standing = keyof (typeof PACKING_WORDS)['en']['placeStates'];

const TONES: Readonly<Record<Standing, StateTone>> = {
  in: 'done',
  next: 'goes',
  open: 'waits',
  none: 'care',
};

/** Every string of the set, treble first: where it stands, and where it is or came from. */
export function PlacesPart({ places, next, bins, isOpen, onNext, onLayBack }: PlacesPartProps) {
  const words = useWords(PACKING_WORDS);
  const nameOf = (binId: string | undefined) => bins.find(({ id }) => id === binId)?.name ?? '';
  return (
    <section aria-labelledby="places" className={styles.part}>
      <h2 id="places">{words.places}</h2>
      <ol className={styles.places}>
        {places.map((place) => {
          const { position, stringKey } = place.wanted;
          const standing = standingOf(place, next);
          const { short, material } = stringKeyInWords(stringKey);
          const bin = place.picked ? nameOf(place.picked.binId) : (place.sources[0]?.bin.name ?? '');
          return (
            <li
              key={position}
              className={styles.place}
              aria-current={standing === 'next' ? 'step' : undefined}
            >
              <span className={styles.number}>{position}</span>
              <span className={styles.what}>
                <strong>{short}</strong> <span className="quiet">{material}</span>
                <span className={styles.where}>
                  <StateMark tone={TONES[standing]}>{words.placeStates[standing]}</StateMark>
                  {bin !== '' && <span>{bin}</span>}
                </span>
              </span>
              {isOpen && place.picked && (
                <Button
                  size="floor"
                  onClick={() => onLayBack(position, bin)}
                  aria-label={words.layBackNamed(position, bin)}
                >
                  {words.layBack}
                </Button>
              )}
              {isOpen && standing === 'open' && (
                <Button
                  kind="bare"
                  size="floor"
                  onClick={() => onNext(position)}
                  aria-label={words.fillNext(position)}
                >
                  {words.next}
                </Button>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function standingOf({ picked, wanted, sources }: Place, next: number | undefined): Standing {
  if (picked) return 'in';
  if (sources.length === 0) return 'none';
  return wanted.position === next ? 'next' : 'open';
}
