import { sizeInBoth, speedInBoth, speedLimitInWords } from '../../../contract/index.js';
import {
  degreesFromRadians,
  formatDecimal,
  formatFraction,
  formatTrimmed,
} from '../../../core/units/index.js';
import type { LayerSetUp } from '../../../core/winding/index.js';
import type { SET_UP_WORDS } from '../../words/set-up.js';

type SetUpWords = (typeof SET_UP_WORDS)['en'];

/** A figure to be set or counted, read from a metre away. */
export interface HugeFigure {
  readonly label: string;
  readonly figure: string;
  readonly unit: string;
  readonly under: string;
}

/** What is set or counted for a layer: the drive, the spindle, the turns. */
export const hugeFigures = (layer: LayerSetUp, words: SetUpWords): readonly HugeFigure[] => [
  driveFigure(layer, words),
  {
    label: words.spindle,
    figure: String(Math.round(layer.spindleRpm)),
    unit: words.rpm,
    under: words.limitedBy(speedLimitInWords(layer.rpmLimitedBy), speedInBoth(layer.traverseMPerS)),
  },
  {
    label: words.turns,
    figure: String(Math.round(layer.turns)),
    unit: '',
    under: words.leadAngle(
      formatDecimal(degreesFromRadians(layer.leadAngleRad), 2),
      Math.round(layer.windSeconds),
    ),
  },
];

function driveFigure({ drive }: LayerSetUp, words: SetUpWords): HugeFigure {
  if (drive.kind === 'servo') {
    return {
      label: words.pitchToType,
      figure: formatTrimmed(drive.pitchM * 1000, 4),
      unit: words.millimetre,
      under: words.thatIs(sizeInBoth(drive.pitchM)),
    };
  }
  return {
    label: words.dial,
    figure: formatTrimmed(drive.dial, 3),
    unit: '',
    under: words.givesPitch(sizeInBoth(drive.pitchM), formatFraction(drive.gap, 1)),
  };
}
