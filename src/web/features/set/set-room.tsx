import { NativeSelect } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { gaugesInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords } from '../../api/use-records.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import type { SetRecord } from './set-draft.js';
import { SetPart } from './set-part.js';
import styles from './set-part.module.css';
import { SetVersions } from './set-versions.js';
import { woundIn } from './set-words.js';
import { setsOnShelf } from './sets-on-shelf.js';

interface SetRoomProps {
  readonly record: SetRecord;
  readonly shop: Shop;
  /** Id of the set that it is laid beside. */
  readonly beside: string | undefined;
}

/** A stock set: what is on the shelf of it, strung as one likes, beside another, and what it was before. */
export function SetRoom({ record, shop, beside }: SetRoomProps) {
  const { body } = record;
  const sets = useAllRecords('set').data ?? [];
  const alike = sets.filter(
    ({ id, body: other }) => id !== record.id && other.strings.length === body.strings.length,
  );
  const other = alike.find(({ id }) => id === beside);
  return (
    <div className={desk.room}>
      <Head record={record} />
      <Shelf record={record} shop={shop} />
      <Beside record={record} alike={alike} beside={other?.id ?? ''} />
      <SetPart
        specs={body.strings}
        shop={shop}
        compare={other && { name: body.name, other: { name: other.body.name, specs: other.body.strings } }}
      />
      <SetVersions record={record} />
    </div>
  );
}

function Head({ record: { id, version, body } }: Pick<SetRoomProps, 'record'>) {
  const { room } = useWords(SETS_WORDS);
  const { number } = useFigures();
  const may = useMay();
  return (
    <header className={desk.head}>
      <div>
        <RoomTitle title={body.name} />
        <p className={styles.gauges}>{gaugesInWords(body.strings)}</p>
        <p className="quiet">{[room.version(number(version)), woundIn(body.strings)].join('; ')}</p>
      </div>
      <div className={desk.row}>
        <Link to="/sets">{room.all}</Link>
        {may('shop.edit') && (
          <Link to="/sets/$id" params={{ id }} search={{ view: 'edit' }} className={buttonClass()}>
            {room.edit}
          </Link>
        )}
      </div>
    </header>
  );
}

function Shelf({ record: { body }, shop }: Pick<SetRoomProps, 'record' | 'shop'>) {
  const { strung, list } = useWords(SETS_WORDS);
  const { number } = useFigures();
  const { sets, shortest } = setsOnShelf(body.strings, shop);
  return (
    <Facts
      facts={[
        {
          name: strung.complete,
          value: (
            <Explained
              name={strung.complete}
              what={strung.completeWhat}
              formula={strung.completeFormula}
              {...(shortest
                ? { inputs: [{ name: gaugeInWords(shortest.spec), value: number(shortest.onShelf) }] }
                : {})}
              source={strung.completeSource}
            >
              {number(sets)}
            </Explained>
          ),
          under:
            shortest &&
            `${list.short}: ${list.shortOf(gaugeInWords(shortest.spec), number(shortest.onShelf))}`,
        },
      ]}
    />
  );
}

interface BesideProps {
  readonly record: SetRecord;
  readonly alike: readonly SetRecord[];
  readonly beside: string;
}

/** Picks a set of as many strings to lay beside this one. */
function Beside({ record: { id }, alike, beside }: BesideProps) {
  const { room } = useWords(SETS_WORDS);
  const navigate = useNavigate();
  if (alike.length === 0) return null;
  return (
    <div className={desk.narrow}>
      <NativeSelect
        label={room.compareWith}
        value={beside}
        data={[
          { value: '', label: room.noOther },
          ...alike.map((each) => ({ value: each.id, label: each.body.name })),
        ]}
        onChange={(event) => {
          const { value } = event.currentTarget;
          const search = value === '' ? {} : { with: value };
          void navigate({ to: '/sets/$id', params: { id }, search, replace: true, resetScroll: false });
        }}
      />
    </div>
  );
}
