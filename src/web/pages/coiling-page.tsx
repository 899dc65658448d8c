import { getRouteApi } from '@tanstack/react-router';
import { CoilingRoom } from '../features/coiling/coiling-room.js';

const route = getRouteApi('/coiling');

export function CoilingPage() {
  return <CoilingRoom lotId={route.useSearch().lot} />;
}
