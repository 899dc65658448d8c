import type { ReactNode } from 'react';
import type { Recipe } from '../../../core/recipes/index.js';
import type { StringBody } from '../../../core/string/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { EndPart } from '../ends/end-part.js';
import { CautionsBox } from './cautions-box.js';
import { CorePart } from './core-part.js';
import { ExpectPart } from './expect-part.js';
import { FirstOffPart } from './first-off-part.js';
import { LayerPart } from './layer-part.js';
import styles from './set-up.module.css';

interface SetUpPartProps {
  readonly sheet: SetUpSheet;
  /** The recipe and the body it makes, for the drawing; left out where the shop no longer has them. */
  readonly made: { readonly recipe: Recipe; readonly body: StringBody } | undefined;
  /** In place of the box of all cautions: where it is known that the reader has read them. */
  readonly cautions?: ReactNode;
}

/** All that a winder needs before the first string, cautions first. */
export function SetUpPart({ sheet, made, cautions }: SetUpPartProps) {
  return (
    <div className={styles.sheet}>
      {cautions ?? <CautionsBox sheet={sheet} />}
      {sheet.layers.map((layer, at) => (
        <LayerPart key={`${layer.wireId} ${layer.woundLengthM}`} sheet={sheet} at={at} />
      ))}
      <CorePart sheet={sheet} made={made} />
      {sheet.ends?.of === 'plain-string' && <EndPart ends={sheet.ends} />}
      <ExpectPart sheet={sheet} />
      <FirstOffPart sheet={sheet} />
    </div>
  );
}
