import { sizeInBoth, speedInBoth, speedLimitInWords } from '../../../contract/index.js';
import {
  degreesFromRadians,
  formatDecimal,
  formatFraction,
  formatTrimmed,
} from '../../../core/units/index.js';
import type { LayerSetUp } from '../../../core/winding/index.js';

/** A figure to be set or counted, read from a metre away. */
export interface HugeFigure {
  readonly label: string;
  readonly figure: string;
  readonly unit: string;
  readonly under: string;
}

/** What is set or counted for a layer: the drive, the spindle, the turns. */
export const hugeFigures = (layer: LayerSetUp): readonly HugeFigure[] => [
  driveFigure(layer),
  {
    label: 'Spindle',
    figure: String(Math.round(layer.spindleRpm)),
    unit: 'rpm',
    under: `limited by ${speedLimitInWords(layer.rpmLimitedBy)}; traverse ${speedInBoth(layer.traverseMPerS)}`,
  },
  {
    label: 'Turns',
    figure: String(Math.round(layer.turns)),
    unit: '',
    under: `lead angle ${formatDecimal(degreesFromRadians(layer.leadAngleRad), 2)}°; ${Math.round(layer.windSeconds)} s of winding`,
  },
];

function driveFigure({ drive }: LayerSetUp): HugeFigure {
  if (drive.kind === 'servo') {
    return {
      label: 'Wrap pitch to type in',
      figure: formatTrimmed(drive.pitchM * 1000, 4),
      unit: 'mm',
      under: `that is ${sizeInBoth(drive.pitchM)}`,
    };
  }
  return {
    label: 'Dial',
    figure: formatTrimmed(drive.dial, 3),
    unit: '',
    under: `gives a pitch of ${sizeInBoth(drive.pitchM)}, ${formatFraction(drive.gap, 1)} over touching turns`,
  };
}
