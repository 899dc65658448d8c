import { getRouteApi } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import { useRecord } from '../api/use-records.js';
import { useShop } from '../api/use-shop.js';
import { CardView } from '../features/request/card-view.js';
import { ClosedRequest } from '../features/request/closed-request.js';
import { RequestRoom } from '../features/request/request-room.js';
import { Asked } from '../parts/asked.js';
import { useWords } from '../words/language.js';
import { REQUESTS_WORDS } from '../words/requests.js';

const route = getRouteApi('/requests/$id');

/** A letter: a new one, one that is open, or one that is over; or the card of its answer. */
export function RequestPage() {
  const { id } = route.useParams();
  return id === 'new' ? <NewRequest /> : <KeptRequest key={id} id={id} />;
}

function NewRequest() {
  const words = useWords(REQUESTS_WORDS);
  return (
    <Asked question={useShop()} what={words.theShop}>
      {(shop) => <RequestRoom record={undefined} shop={shop} onOpenAnew={() => {}} />}
    </Asked>
  );
}

function KeptRequest({ id }: { readonly id: string }) {
  const words = useWords(REQUESTS_WORDS);
  const { view } = route.useSearch();
  const shop = useShop();
  const [opened, setOpened] = useState(0);
  const openAnew = useCallback(() => setOpened((times) => times + 1), []);
  return (
    <Asked question={useRecord('request', id)} what={words.theRequest}>
      {(record) => {
        if (view === 'card') return <CardView record={record} />;
        if (record.state === 'ordered' || record.state === 'declined')
          return <ClosedRequest record={record} />;
        return (
          <Asked question={shop} what={words.theShop}>
            {(known) => <RequestRoom key={opened} record={record} shop={known} onOpenAnew={openAnew} />}
          </Asked>
        );
      }}
    </Asked>
  );
}
