import { DryRoom } from '../features/dry-room/dry-room.js';

export const DryRoomPage = () => <DryRoom />;
