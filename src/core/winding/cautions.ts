import { ALLOYS } from '../materials/index.js';
import type { Construction } from '../string/index.js';

/** What may hurt a hand, an eye or a string in this run. Each surface words it; none may leave it out. */
export type Caution =
  | 'rotating-spindle'
  | 'wire-whip'
  | 'sharp-ends'
  | 'nickel-skin'
  | 'metal-dust'
  | 'lock-out'
  | 'local-rules'
  /** The hook of a core-end machine turns. */
  | 'turning-hook'
  /** Ends are pulled, some until they break. */
  | 'pull-test'
  /** Round core: it must be flattened under both ends of the wrap BEFORE winding, or the wrap turns on it. */
  | 'flatten-round-core';

/**
 * The cautions of a run, most urgent first. Round core: flattened over the last 32 to 45 mm under the end of
 * the wrap before winding, so that its edges dent the wrap and hold it (craft note, 2000; US 5,892,166 for
 * the purpose). Dust: winding makes little, but sanding or polishing on the turning string does.
 */
export function cautionsFor(construction: Construction): readonly Caution[] {
  const alloys =
    construction.kind === 'plain'
      ? [construction.wire.alloy]
      : [construction.core.alloy, ...construction.layers.map(({ alloy }) => alloy)];
  const nickel: readonly Caution[] = alloys.some((id) => ALLOYS[id].containsNickel) ? ['nickel-skin'] : [];
  if (construction.kind === 'plain') {
    return ['wire-whip', 'pull-test', 'turning-hook', 'sharp-ends', ...nickel, 'local-rules'];
  }
  const round: readonly Caution[] = construction.core.shape === 'round' ? ['flatten-round-core'] : [];
  return [
    'rotating-spindle',
    'lock-out',
    'wire-whip',
    'sharp-ends',
    ...round,
    ...nickel,
    'metal-dust',
    'local-rules',
  ];
}

/** The cautions of ending cores, or plain strings, at the bench: nothing is wound there, and wire is pulled. */
export function endCautions(construction: Construction): readonly Caution[] {
  const wire = construction.kind === 'plain' ? construction.wire : construction.core;
  return cautionsFor({ kind: 'plain', wire: { ...wire, shape: 'round' } });
}
