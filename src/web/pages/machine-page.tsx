import { getRouteApi } from '@tanstack/react-router';
import { MachineRoom } from '../features/machine/machine-room.js';

const route = getRouteApi('/machine');

export function MachinePage() {
  return <MachineRoom runId={route.useSearch().run} />;
}
