import { lengthInBoth, metres, setPointInWords, sizeInBoth, weight } from '../../../contract/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import { LeanedOn } from './leaned-on.js';
import styles from './set-up.module.css';
import { hugeFigures } from './sheet-figures.js';

/** One layer of wrap: what is set or counted, huge; the rest under it. */
export function LayerPart({ sheet, at }: { readonly sheet: SetUpSheet; readonly at: number }) {
  const words = useWords(SET_UP_WORDS);
  const layer = sheet.layers[at];
  if (!layer) return null;
  const place = sheet.layers.length === 1 ? words.wrap : words.wrapLayer(at + 1, sheet.layers.length);
  const id = `layer-${at}`;
  return (
    <section aria-labelledby={id} className={styles.part}>
      <h2 id={id}>{words.titled(place, layer.wireId, sizeInBoth(layer.wireDiameterM))}</h2>
      <dl className={styles.huge}>
        {hugeFigures(layer, words).map(({ label, figure, unit, under }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd className={styles.figure}>
              {figure}
              {unit && <small> {unit}</small>}
            </dd>
            <dd className={styles.under}>{under}</dd>
          </div>
        ))}
      </dl>
      <dl className={styles.facts}>
        <div className={styles.across}>
          <dt>{words.wrapTension}</dt>
          <dd>
            {setPointInWords(layer.wrapTension)}
            <LeanedOn point={layer.wrapTension} />
          </dd>
        </div>
        <div>
          <dt>{words.woundLength}</dt>
          <dd>{lengthInBoth(layer.woundLengthM)}</dd>
        </div>
        <div>
          <dt>{words.wirePerString}</dt>
          <dd>{words.amount(metres(layer.wirePerStringM), weight(layer.wirePerStringKg))}</dd>
        </div>
      </dl>
    </section>
  );
}
