import { Link } from '@tanstack/react-router';
import type { ComponentType } from 'react';
import desk from '../../parts/desk.module.css';
import { Lost } from '../../parts/lost.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { DevicesPart } from './devices-part.js';
import { JournalPart } from './journal-part.js';
import { MaterialsPart } from './materials-part.js';
import { PeoplePart } from './people-part.js';
import { BinsPart, InstrumentsPart, MachinesPart, TuningsPart, WiresPart } from './record-parts.js';
import { RulesPart } from './rules-part.js';
import styles from './shop-room.module.css';
import { TokensPart } from './tokens-part.js';

type Part = keyof (typeof SHOP_WORDS)['en']['parts'];

const PARTS: Readonly<Record<Part, ComponentType>> = {
  people: PeoplePart,
  devices: DevicesPart,
  tokens: TokensPart,
  machines: MachinesPart,
  wires: WiresPart,
  materials: MaterialsPart,
  bins: BinsPart,
  instruments: InstrumentsPart,
  tunings: TuningsPart,
  rules: RulesPart,
  journal: JournalPart,
};

/** The parts of the shop, one at a time. */
export function ShopRoom({ part }: { readonly part: string }) {
  const words = useWords(SHOP_WORDS);
  if (!isPart(part)) return <Lost what={words.noSuchPart} />;
  const Inside = PARTS[part];
  return (
    <div className={styles.shop}>
      <nav aria-label={words.partsName}>
        <ul className={styles.parts}>
          {(Object.keys(PARTS) as Part[]).map((each) => (
            <li key={each}>
              <Link
                to="/shop/$part"
                params={{ part: each }}
                className={each === part ? `${styles.part} active` : styles.part}
              >
                {words.parts[each]}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      <div className={desk.room} key={part}>
        <div>
          <RoomTitle title={words.parts[part]} />
          <p className={desk.lead}>{words.leads[part]}</p>
        </div>
        <Inside />
      </div>
    </div>
  );
}

const isPart = (part: string): part is Part => Object.hasOwn(PARTS, part);
