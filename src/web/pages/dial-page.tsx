import { getRouteApi } from '@tanstack/react-router';
import { DialRoom } from '../features/dial-round/dial-room.js';

const route = getRouteApi('/machine/dial');

export function DialPage() {
  const { machine, what } = route.useSearch();
  return <DialRoom machineId={machine} what={what} />;
}
