import { firstOffInWords, protocolInWords } from '../../../contract/index.js';
import { formatMillimetres } from '../../../core/units/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { Sideways } from '../../parts/sideways.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import styles from './set-up.module.css';

/** The strings to measure before the rest is made: a box for every reading, to fill in by pencil. */
export function FirstOffPart({ sheet }: { readonly sheet: SetUpSheet }) {
  const words = useWords(SET_UP_WORDS);
  const { strings, placesFromEndM, rotationsDeg, why } = sheet.firstOff;
  const names = Array.from({ length: strings }, (_, at) => words.string(at + 1));
  return (
    <section aria-labelledby="first-off" className={styles.part}>
      <h2 id="first-off">{words.measureFirst(strings, placesFromEndM.length, rotationsDeg.length)}</h2>
      <p>{protocolInWords(sheet.firstOff)}</p>
      <p>{firstOffInWords(why)}</p>
      <Sideways label={words.readings}>
        <table className={styles.readings}>
          <caption className="unseen">{words.readingsMore}</caption>
          <thead>
            <tr>
              <th scope="col" rowSpan={2}>
                {words.fromTheEnd}
              </th>
              {placesFromEndM.map((placeM) => (
                <th key={placeM} scope="colgroup" colSpan={rotationsDeg.length}>
                  {words.place(formatMillimetres(placeM, 0))}
                </th>
              ))}
              <th scope="col" rowSpan={2}>
                {words.mean}
              </th>
            </tr>
            <tr>
              {placesFromEndM.flatMap((placeM) =>
                rotationsDeg.map((turn) => (
                  <th key={`${placeM} ${turn}`} scope="col">
                    {words.turn(turn)}
                  </th>
                )),
              )}
            </tr>
          </thead>
          <tbody>
            {names.map((name) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {placesFromEndM.flatMap((placeM) =>
                  rotationsDeg.map((turn) => <td key={`${placeM} ${turn}`} />),
                )}
                <td className={styles.mean} />
              </tr>
            ))}
          </tbody>
        </table>
      </Sideways>
    </section>
  );
}
