import { getRouteApi } from '@tanstack/react-router';
import { PracticeRoom } from '../features/practice/practice-room.js';

const route = getRouteApi('/practice');

export function PracticePage() {
  const { machine, seed } = route.useSearch();
  return <PracticeRoom machine={machine} seed={seed} />;
}
