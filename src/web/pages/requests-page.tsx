import { getRouteApi } from '@tanstack/react-router';
import { RequestsList } from '../features/requests/requests-list.js';

const route = getRouteApi('/requests');

/** What players ask for. */
export function RequestsPage() {
  const { state } = route.useSearch();
  return <RequestsList state={state} />;
}
