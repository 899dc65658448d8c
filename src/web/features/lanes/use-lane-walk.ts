import { type KeyboardEvent, useState } from 'react';
import { isLaneStep, laneWalk } from './lane-walk.js';
import type { Lane } from './lanes-of.js';

export interface LaneWalk {
  /** The run at which the Tab key enters the lanes. */
  readonly entryLotId: string | undefined;
  /** The run that was last pointed at or walked to. */
  readonly touchedLotId: string | undefined;
  readonly point: (lotId: string) => void;
  readonly enter: (lotId: string) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** Moves among the runs of the lanes by arrow keys. `idOf` gives the id of a run's element. */
export function useLaneWalk(lanes: readonly Lane[], idOf: (lotId: string) => string): LaneWalk {
  const [touchedLotId, point] = useState<string>();
  const [entryLotId, setEntry] = useState(lanes.find(({ bars }) => bars.length > 0)?.bars[0]?.run.lotId);
  return {
    entryLotId,
    touchedLotId,
    point,
    enter: (lotId) => {
      setEntry(lotId);
      point(lotId);
    },
    onKeyDown: (event) => {
      if (entryLotId === undefined || !isLaneStep(event.key)) return;
      event.preventDefault();
      const next = laneWalk(lanes, entryLotId, event.key);
      if (next !== undefined) document.getElementById(idOf(next))?.focus();
    },
  };
}
