import { firstOffInWords } from '../../../contract/index.js';
import { formatMillimetres } from '../../../core/units/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { Sideways } from '../../parts/sideways.js';
import styles from './set-up.module.css';

/** The strings to measure before the rest is made: a box for every reading, to fill in by pencil. */
export function FirstOffPart({ sheet }: { readonly sheet: SetUpSheet }) {
  const { strings, placesFromEndM, rotationsDeg, why } = sheet.firstOff;
  const names = Array.from({ length: strings }, (_, at) => `String ${at + 1}`);
  return (
    <section aria-labelledby="first-off" className={styles.part}>
      <h2 id="first-off">
        Measure first: {strings} strings, {placesFromEndM.length} places, {rotationsDeg.length} turns in the
        micrometer
      </h2>
      <p>{firstOffInWords(why)}</p>
      <Sideways label="Readings of the first strings">
        <table className={styles.readings}>
          <caption className="unseen">
            Readings of the first strings: places in millimetres from the end, turns in degrees
          </caption>
          <thead>
            <tr>
              <th scope="col" rowSpan={2}>
                From the end
              </th>
              {placesFromEndM.map((placeM) => (
                <th key={placeM} scope="colgroup" colSpan={rotationsDeg.length}>
                  {formatMillimetres(placeM, 0)} mm
                </th>
              ))}
              <th scope="col" rowSpan={2}>
                Mean
              </th>
            </tr>
            <tr>
              {placesFromEndM.flatMap((placeM) =>
                rotationsDeg.map((turn) => (
                  <th key={`${placeM} ${turn}`} scope="col">
                    {turn}°
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
