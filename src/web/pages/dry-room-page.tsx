import { getRouteApi } from '@tanstack/react-router';
import { DryRoom } from '../features/dry-room/dry-room.js';

const route = getRouteApi('/dry-room');

export const DryRoomPage = () => <DryRoom first={route.useSearch().room} />;
