import type { CoreWire, WrapLayer } from '../string/index.js';
import type { PastRun } from './past-run.js';

/** The run that is to be set up, as nearness is reckoned from it. */
export interface RunAhead {
  readonly machineId: string;
  readonly recipeId?: string;
  /** Lot of the wire in question, where it is known which spool will be taken. */
  readonly lot?: string;
}

/** A figure of a past run, carried over to the wire at hand, and how near that run is: 1 is the same again. */
export interface NearFigure {
  readonly run: PastRun;
  readonly value: number;
  readonly weight: number;
}

/** A run counts half as much when its wire is about this share thicker or thinner ... */
const HALF_WEIGHT_LOG = Math.log(1.1);
/** ... and not at all beyond this. */
const TOO_FAR_LOG = Math.log(1.3);
/** What a run still counts that was wound on another machine, by another recipe, or of another lot (or none knows which). */
const OTHER_MACHINE = 0.3;
const OTHER_RECIPE = 0.8;
const OTHER_LOT = 0.8;
// All of them our own choice: no source.

/** Stretching tensions of cores of this shape, N, carried over by equal stress. */
export function nearCoreTensions(
  record: readonly PastRun[],
  ahead: RunAhead,
  core: Pick<CoreWire, 'shape' | 'sizeM'>,
): readonly NearFigure[] {
  return record.flatMap((run) => {
    const { shape, sizeM, tensionN, lot } = run.core;
    if (shape !== core.shape || tensionN === undefined) return [];
    return nearFigure(run, ahead, { sizeM, lot, figure: tensionN }, core.sizeM, EQUAL_STRESS);
  });
}

interface WrapAhead {
  readonly layer: Pick<WrapLayer, 'alloy' | 'wireDiameterM'>;
  readonly index: number;
}

/** Tensions of wrap wire of this alloy in the same layer, N, carried over by equal stress. */
export const nearWrapTensions = (
  record: readonly PastRun[],
  ahead: RunAhead,
  wrap: WrapAhead,
): readonly NearFigure[] => nearLayers(record, ahead, wrap, { wish: 'tensionN', power: EQUAL_STRESS });

/** Spindle speeds on this machine with this alloy in the same layer, turns a minute, as they are. */
export const nearSpindleRpm = (
  record: readonly PastRun[],
  ahead: RunAhead,
  wrap: WrapAhead,
): readonly NearFigure[] =>
  nearLayers(
    record.filter(({ machineId }) => machineId === ahead.machineId),
    ahead,
    wrap,
    { wish: 'spindleRpm', power: 0 },
  );

/** Mean of near figures, the nearer the weightier; undefined where there is none. */
export function nearMean(near: readonly NearFigure[]): number | undefined {
  const weights = near.reduce((sum, { weight }) => sum + weight, 0);
  return weights === 0
    ? undefined
    : near.reduce((sum, { value, weight }) => sum + weight * value, 0) / weights;
}

/** A tension goes with the section of the wire. */
const EQUAL_STRESS = 2;

function nearLayers(
  record: readonly PastRun[],
  ahead: RunAhead,
  { layer, index }: WrapAhead,
  { wish, power }: { readonly wish: 'tensionN' | 'spindleRpm'; readonly power: number },
): readonly NearFigure[] {
  return record.flatMap((run) => {
    const past = run.layers[index];
    const figure = past?.[wish];
    if (!past || figure === undefined || past.alloy !== layer.alloy) return [];
    const { wireDiameterM: sizeM, lot } = past;
    return nearFigure(run, ahead, { sizeM, lot, figure }, layer.wireDiameterM, power);
  });
}

function nearFigure(
  run: PastRun,
  ahead: RunAhead,
  past: { readonly sizeM: number; readonly lot: string | undefined; readonly figure: number },
  sizeM: number,
  power: number,
): readonly NearFigure[] {
  const away = Math.abs(Math.log(past.sizeM / sizeM));
  if (away > TOO_FAR_LOG) return [];
  const weight =
    0.5 ** ((away / HALF_WEIGHT_LOG) ** 2) *
    (run.machineId === ahead.machineId ? 1 : OTHER_MACHINE) *
    (run.recipeId !== undefined && run.recipeId === ahead.recipeId ? 1 : OTHER_RECIPE) *
    (past.lot !== undefined && past.lot === ahead.lot ? 1 : OTHER_LOT);
  return [{ run, value: past.figure * (sizeM / past.sizeM) ** power, weight }];
}
