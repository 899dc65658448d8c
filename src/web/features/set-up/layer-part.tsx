import { lengthInBoth, metres, setPointInWords, sizeInBoth, weight } from '../../../contract/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import styles from './set-up.module.css';
import { hugeFigures } from './sheet-figures.js';

/** One layer of wrap: what is set or counted, huge; the rest under it. */
export function LayerPart({ sheet, at }: { readonly sheet: SetUpSheet; readonly at: number }) {
  const layer = sheet.layers[at];
  if (!layer) return null;
  const place = sheet.layers.length === 1 ? 'Wrap' : `Wrap layer ${at + 1} of ${sheet.layers.length}`;
  const id = `layer-${at}`;
  return (
    <section aria-labelledby={id} className={styles.part}>
      <h2 id={id}>
        {place}: {layer.wireId}, {sizeInBoth(layer.wireDiameterM)}
      </h2>
      <dl className={styles.huge}>
        {hugeFigures(layer).map(({ label, figure, unit, under }) => (
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
          <dt>Wrap tension</dt>
          <dd>{setPointInWords(layer.wrapTension)}</dd>
        </div>
        <div>
          <dt>Wound length</dt>
          <dd>{lengthInBoth(layer.woundLengthM)}</dd>
        </div>
        <div>
          <dt>Wire a string, tails included</dt>
          <dd>
            {metres(layer.wirePerStringM)}, {weight(layer.wirePerStringKg)}
          </dd>
        </div>
      </dl>
    </section>
  );
}
