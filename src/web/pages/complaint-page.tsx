import { getRouteApi } from '@tanstack/react-router';
import { ComplaintRoom } from '../features/complaints/complaint-room.js';
import { RegisterRoom } from '../features/complaints/register-room.js';

const route = getRouteApi('/complaints/$id');

/** One complaint, or a new one. */
export function ComplaintPage() {
  const { id } = route.useParams();
  return id === 'new' ? <RegisterRoom /> : <ComplaintRoom key={id} id={id} />;
}
