import { useParams } from '@tanstack/react-router';
import { ShopRoom } from '../features/shop/shop-room.js';

/** The shop's own room, at the part that the address names. */
export function ShopPage() {
  const { part = 'people' } = useParams({ strict: false });
  return <ShopRoom part={part} />;
}
