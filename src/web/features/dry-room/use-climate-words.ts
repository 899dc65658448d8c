import { useMemo } from 'react';
import type { DryRoomLimits } from '../../../core/stock/index.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';

interface Climate {
  readonly temperatureC: number;
  readonly relativeHumidity: number;
}

/** A climate in words, and what is wrong with one. */
export function useClimateWords(limits: DryRoomLimits): {
  readonly reading: (climate: Climate) => string;
  readonly faults: (climate: Climate) => string;
  readonly limits: string;
} {
  const words = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  return useMemo(() => {
    const { leastC, mostC, mostHumidity } = limits;
    const [least, most] = [figures.number(leastC), figures.number(mostC)];
    const damp = figures.number(mostHumidity * 100);
    return {
      reading: ({ temperatureC, relativeHumidity }) =>
        words.reading(figures.number(temperatureC, 1), figures.number(relativeHumidity * 100, 1)),
      faults: ({ temperatureC, relativeHumidity }) =>
        [
          relativeHumidity > mostHumidity ? words.tooDamp(damp) : '',
          temperatureC < leastC ? words.tooCold(least) : '',
          temperatureC > mostC ? words.tooWarm(most) : '',
        ]
          .filter(Boolean)
          .join(' '),
      limits: words.limits(least, most, damp),
    };
  }, [words, figures, limits]);
}
