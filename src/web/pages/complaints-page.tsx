import { getRouteApi } from '@tanstack/react-router';
import { ComplaintsRoom } from '../features/complaints/complaints-room.js';

const route = getRouteApi('/complaints');

/** What players complain of. */
export const ComplaintsPage = () => <ComplaintsRoom wish={route.useSearch()} />;
