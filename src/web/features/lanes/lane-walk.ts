import type { Lane } from './lanes-of.js';

export type LaneStep = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown' | 'Home' | 'End';

export const isLaneStep = (key: string): key is LaneStep =>
  ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End'].includes(key);

/** The lot that an arrow key leads to: along the lane, or to the run at the same time on the next lane that has any. */
export function laneWalk(lanes: readonly Lane[], fromLotId: string, step: LaneStep): string | undefined {
  const laneAt = lanes.findIndex(({ bars }) => bars.some(({ run }) => run.lotId === fromLotId));
  const bars = lanes[laneAt]?.bars;
  if (!bars) return undefined;
  const at = bars.findIndex(({ run }) => run.lotId === fromLotId);
  switch (step) {
    case 'ArrowLeft':
      return bars[at - 1]?.run.lotId;
    case 'ArrowRight':
      return bars[at + 1]?.run.lotId;
    case 'Home':
      return bars[0]?.run.lotId;
    case 'End':
      return bars.at(-1)?.run.lotId;
    default: {
      const others = step === 'ArrowUp' ? lanes.slice(0, laneAt).reverse() : lanes.slice(laneAt + 1);
      const here = bars[at];
      return (
        here &&
        nearestIn(
          others.find((lane) => lane.bars.length > 0),
          middleOf(here),
        )
      );
    }
  }
}

type Bar = Lane['bars'][number];

const middleOf = ({ setUpAt, endsAt }: Bar): number => (setUpAt + endsAt) / 2;

function nearestIn(lane: Lane | undefined, place: number): string | undefined {
  const [nearest] = (lane?.bars ?? []).toSorted(
    (a, b) => Math.abs(middleOf(a) - place) - Math.abs(middleOf(b) - place),
  );
  return nearest?.run.lotId;
}
