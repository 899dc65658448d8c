import type { Need } from '../../../contract/index.js';
import { Explained } from '../../parts/explained.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { TODAY_WORDS } from '../../words/today.js';

type Of<Kind extends Need['kind']> = Extract<Need, { readonly kind: Kind }>;

/** How long a wire lasts, how that is known, and that it is too short. */
export function WireFigure({ need }: { readonly need: Of<'wire-low'> }) {
  const words = useWords(TODAY_WORDS);
  const { number, weight } = useFigures();
  const { onHandKg, usedKg, overDays, coverDays, wantedDays, basis } = need;
  return (
    <>
      <Explained
        name={words.coverName(need.name)}
        what={words.coverWhat}
        formula={words.coverFormula}
        inputs={[
          { name: words.onHand, value: weight(onHandKg) },
          { name: words.used(overDays), value: weight(usedKg) },
          { name: words.wanted, value: words.daysOf(number(wantedDays)) },
        ]}
        source={words.coverSource[basis]}
      >
        {onHandKg > 0 ? words.cover(number(coverDays, coverDays < 10 ? 1 : 0)) : words.empty}
      </Explained>
      {'. '}
      {words.orderWire(number(wantedDays))}
    </>
  );
}

/** The climate of a dry room beside its limits. */
export function DryRoomFigure({ need }: { readonly need: Of<'dry-room-out'> }) {
  const words = useWords(TODAY_WORDS);
  const { number, share, moment } = useFigures();
  const { room, temperatureC, relativeHumidity, limits, since } = need;
  return (
    <>
      <Explained
        name={words.climateName(room)}
        what={words.climateWhat}
        inputs={[
          {
            name: words.temperatureLimits,
            value: words.between(number(limits.leastC), number(limits.mostC)),
          },
          { name: words.humidityLimit, value: words.atMost(share(limits.mostHumidity)) },
        ]}
        source={words.climateSource[limits.basis]}
      >
        {words.climate(number(temperatureC, 1), share(relativeHumidity))}
      </Explained>
      {'. '}
      {words.climateSince(moment(since))}
    </>
  );
}
