import { getRouteApi } from '@tanstack/react-router';
import { useMay } from '../api/session.js';
import { useRecord } from '../api/use-records.js';
import { useShop } from '../api/use-shop.js';
import { EditSet } from '../features/set/edit-set.js';
import { SetRoom } from '../features/set/set-room.js';
import { Asked } from '../parts/asked.js';
import { Lost } from '../parts/lost.js';
import { useWords } from '../words/language.js';
import { SETS_WORDS } from '../words/sets.js';

const route = getRouteApi('/sets/$id');

/** A stock set, or the form of one. */
export function SetPage() {
  const { id } = route.useParams();
  return id === 'new' ? <NewSet /> : <KeptSet key={id} id={id} />;
}

function NewSet() {
  const words = useWords(SETS_WORDS);
  const may = useMay();
  const shop = useShop();
  if (!may('shop.edit')) return <Lost what={words.room.lost} />;
  return (
    <Asked question={shop} what={words.theSet}>
      {(known) => <EditSet record={undefined} shop={known} />}
    </Asked>
  );
}

function KeptSet({ id }: { readonly id: string }) {
  const words = useWords(SETS_WORDS);
  const { with: beside, view } = route.useSearch();
  const may = useMay();
  const shop = useShop();
  return (
    <Asked question={useRecord('set', id)} what={words.theSet}>
      {(record) => (
        <Asked question={shop} what={words.theSet}>
          {(known) =>
            view === 'edit' && may('shop.edit') ? (
              <EditSet record={record} shop={known} />
            ) : (
              <SetRoom record={record} shop={known} beside={beside} />
            )
          }
        </Asked>
      )}
    </Asked>
  );
}
