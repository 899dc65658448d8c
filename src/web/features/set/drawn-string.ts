import { pitchName } from '../../../core/units/index.js';
import { gaugeInWords } from '../request/set-words.js';
import type { StrungString } from './strung-set.js';

/** A string as the picture of a set draws it. */
export interface DrawnString {
  readonly position: number;
  readonly note: string;
  /** `26 wound` */
  readonly gauge: string;
  readonly kind: 'plain' | 'wound';
  readonly diameterM: number;
  readonly speakingLengthM: number;
  readonly tensionN: number;
  readonly wishedTensionN?: number | undefined;
}

/** A strung string, to be drawn. */
export const drawn = ({
  position,
  pitch,
  spec,
  body,
  speakingLengthM,
  figures,
  wishedTensionN,
}: StrungString): DrawnString => ({
  position,
  note: pitchName(pitch),
  gauge: gaugeInWords(spec),
  kind: body.kind,
  diameterM: body.meanDiameterM,
  speakingLengthM,
  tensionN: figures.tensionN.value,
  wishedTensionN,
});
