import { sizeInBoth } from '../../../contract/index.js';
import type { StringSection } from './section-of.js';

/** The drawing in words. */
export function sectionInWords({ core, layers, outsideM }: StringSection): string {
  const over = `${sizeInBoth(outsideM)} over all`;
  if (layers.length === 0) return `Plain wire, ${over}.`;
  const shape =
    core.shape === 'hex'
      ? `Hexagonal core, ${sizeInBoth(core.sizeM)} across flats`
      : `Round core, ${sizeInBoth(core.sizeM)}`;
  const wraps = layers.map(({ widthM }) => sizeInBoth(widthM)).join(' and over it ');
  return `${shape}, wrapped with ${wraps}; ${over}.`;
}
