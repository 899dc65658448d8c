/** A maker's lot of one wire under one name, and back: makers count their lots by themselves, so the wire belongs to it. */
export const lotName = (wireId: string, lot: string): string => `${wireId}/${lot}`;

export function readLotName(name: string): { readonly wireId: string; readonly lot: string } {
  const at = name.indexOf('/');
  return { wireId: name.slice(0, at), lot: name.slice(at + 1) };
}
