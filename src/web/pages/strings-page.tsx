import { getRouteApi } from '@tanstack/react-router';
import { BinPart } from '../features/strings/bin-room.js';
import { LotPart } from '../features/strings/lot-room.js';
import { StringsRoom } from '../features/strings/strings-room.js';

const route = getRouteApi('/strings');

/** All finished strings; or one lot, or one bin, where the address names it. */
export function StringsPage() {
  const { lot, bin } = route.useSearch();
  if (lot !== undefined) return <LotPart key={lot} id={lot} />;
  return bin === undefined ? <StringsRoom /> : <BinPart key={bin} id={bin} />;
}
