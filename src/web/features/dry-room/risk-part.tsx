import type { DryRoomAir } from '../../../contract/index.js';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';

/** What the air of these days meant for bright steel, and who says so. */
export function RiskPart({ air: { risk, gaps } }: { readonly air: DryRoomAir }) {
  const { risk: words } = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const hours = (value: number) => words.hours(figures.number(value, value > 0 && value < 10 ? 1 : 0));
  return (
    <section aria-labelledby="risk">
      <h2 id="risk">{words.title}</h2>
      <p className={risk.verdict === 'dry' ? '' : 'care'}>{words.verdicts[risk.verdict]}</p>
      <Facts
        facts={[
          { name: words.known, value: hours(risk.knownHours), under: words.gaps(gaps.length) },
          {
            name: words.critical,
            value: (
              <Explained
                name={words.critical}
                what={words.criticalWhat}
                formula={words.criticalFormula}
                source={words.criticalSource}
              >
                {hours(risk.criticalHours)}
              </Explained>
            ),
            care: risk.criticalHours > 0,
          },
          {
            name: words.wet,
            value: (
              <Explained
                name={words.wet}
                what={words.wetWhat}
                formula={words.wetFormula}
                source={words.wetSource}
              >
                {hours(risk.wetHours)}
              </Explained>
            ),
            under:
              risk.wetness === undefined
                ? words.noYear
                : words.wetness(risk.wetness, figures.number(risk.wetHoursAYear ?? 0)),
            care: risk.wetHours > 0,
          },
        ]}
      />
      <p className="quiet small">{words.airAlone}</p>
    </section>
  );
}
