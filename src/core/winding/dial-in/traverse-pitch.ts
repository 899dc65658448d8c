/** How the turns of a wound string lie, as one sees it. */
export type TurnsSeen = 'gaps' | 'overlaps' | 'even';

/** A string looked at, and the traverse per turn it was wound with. */
export interface PitchLook {
  readonly pitchM: number;
  readonly seen: TurnsSeen;
}

/** What the traverse can be put to. */
export interface PitchRange {
  readonly leastM: number;
  readonly mostM: number;
  /** The machine's own step. */
  readonly stepM: number;
}

export type PitchAdvice =
  | { readonly kind: 'keep' }
  | { readonly kind: 'move'; readonly toM: number; readonly byM: number; readonly seen: TurnsSeen }
  /** Gaps and overlaps were seen the wrong way round: one of the looks was wrong, or the wire changed. */
  | { readonly kind: 'look-again'; readonly gapsAtM: number; readonly overlapsAtM: number }
  /** Gaps at one step, overlaps at the next: the wider is kept, a small gap being better than turns that climb. */
  | { readonly kind: 'no-finer'; readonly toM: number }
  | { readonly kind: 'end-of-traverse'; readonly seen: TurnsSeen };

/** Share of the pitch that the first move takes; later ones halve what is left open. Common practice, no source. */
const FIRST_MOVE_SHARE = 0.01;

/**
 * Where to put the traverse after looking at the turns: closer where gaps are seen, wider where turns overlap, in
 * one rule step until the answer changes, then half-way between the two. `looks` in order, at least one. Metres.
 */
export function pitchAdvice(looks: readonly PitchLook[], range: PitchRange): PitchAdvice {
  const now = looks.at(-1);
  if (!now || now.seen === 'even') return { kind: 'keep' };
  const gaps = looks.filter(({ seen }) => seen === 'gaps').map(({ pitchM }) => pitchM);
  const overlaps = looks.filter(({ seen }) => seen === 'overlaps').map(({ pitchM }) => pitchM);
  const gapsAtM = Math.min(...gaps);
  const overlapsAtM = Math.max(...overlaps);
  if (gaps.length > 0 && overlaps.length > 0) {
    if (gapsAtM - overlapsAtM < range.stepM / 2) return { kind: 'look-again', gapsAtM, overlapsAtM };
    if (gapsAtM - overlapsAtM < 1.5 * range.stepM) return { kind: 'no-finer', toM: gapsAtM };
    return moveTo((gapsAtM + overlapsAtM) / 2, now, range);
  }
  const stepM = Math.max(range.stepM, FIRST_MOVE_SHARE * now.pitchM);
  return moveTo(now.pitchM + (now.seen === 'gaps' ? -stepM : stepM), now, range);
}

function moveTo(
  wishM: number,
  { pitchM, seen }: PitchLook,
  { leastM, mostM, stepM }: PitchRange,
): PitchAdvice {
  const steps = Math.round((Math.min(mostM, Math.max(leastM, wishM)) - leastM) / stepM);
  const toM = leastM + Math.min(steps, Math.floor((mostM - leastM) / stepM + 1e-9)) * stepM;
  const byM = toM - pitchM;
  if (Math.abs(byM) < stepM / 2) return { kind: 'end-of-traverse', seen };
  return { kind: 'move', toM, byM, seen };
}
