import type { AlloyId } from '../materials/index.js';
import type { CoreWire, WrapLayer } from '../string/index.js';

/** What a machine was set to in a run whose strings were good. Tensions in N. */
export interface PastRun {
  readonly machineId: string;
  readonly core: { readonly shape: CoreWire['shape']; readonly sizeM: number; readonly tensionN?: number };
  /** From the core outwards. */
  readonly layers: readonly {
    readonly alloy: AlloyId;
    readonly wireDiameterM: number;
    readonly tensionN?: number;
    readonly spindleRpm?: number;
  }[];
}

/** A figure out of the record: the mean of near runs, the nearer the weightier. */
export interface RecordedFigure {
  readonly value: number;
  readonly runs: number;
}

/** Stretching tension of the core: near runs on the same machine with a core of the same shape, N. */
export function recordedCoreTension(
  record: readonly PastRun[],
  machineId: string,
  core: Pick<CoreWire, 'shape' | 'sizeM'>,
): RecordedFigure | undefined {
  const near = record
    .filter((run) => run.machineId === machineId && run.core.shape === core.shape)
    .flatMap(({ core: { sizeM, tensionN } }) =>
      tensionN === undefined ? [] : [{ sizeM, figure: tensionN }],
    );
  return carriedOver(near, core.sizeM, 2);
}

/** Tension of the wrap wire: near runs on the same machine with this alloy in the same layer, N. */
export function recordedWrapTension(
  record: readonly PastRun[],
  machineId: string,
  wrap: { readonly layer: Pick<WrapLayer, 'alloy' | 'wireDiameterM'>; readonly index: number },
): RecordedFigure | undefined {
  return carriedOver(nearLayers(record, machineId, wrap, 'tensionN'), wrap.layer.wireDiameterM, 2);
}

/** Spindle speed: near runs on the same machine with this alloy in the same layer, turns per minute. */
export function recordedSpindleRpm(
  record: readonly PastRun[],
  machineId: string,
  wrap: { readonly layer: Pick<WrapLayer, 'alloy' | 'wireDiameterM'>; readonly index: number },
): RecordedFigure | undefined {
  return carriedOver(nearLayers(record, machineId, wrap, 'spindleRpm'), wrap.layer.wireDiameterM, 0);
}

function nearLayers(
  record: readonly PastRun[],
  machineId: string,
  wrap: { readonly layer: Pick<WrapLayer, 'alloy' | 'wireDiameterM'>; readonly index: number },
  wish: 'tensionN' | 'spindleRpm',
): readonly SizedFigure[] {
  return record
    .filter((run) => run.machineId === machineId)
    .flatMap((run) => {
      const past = run.layers[wrap.index];
      const figure = past?.[wish];
      if (!past || figure === undefined || past.alloy !== wrap.layer.alloy) return [];
      return [{ sizeM: past.wireDiameterM, figure }];
    });
}

interface SizedFigure {
  readonly sizeM: number;
  readonly figure: number;
}

/** A run counts half as much when its wire is about this share thicker or thinner ... */
const HALF_WEIGHT_LOG = Math.log(1.1);
/** ... and not at all beyond this. Both are our own choice. */
const TOO_FAR_LOG = Math.log(1.3);

/**
 * Mean of the figures, each carried over to the wire at hand by the `power` of the ratio of sizes (2 for a
 * tension: the same stress) and weighted by how near its size is. Undefined where no run is near.
 */
function carriedOver(near: readonly SizedFigure[], sizeM: number, power: number): RecordedFigure | undefined {
  let weights = 0;
  let sum = 0;
  let runs = 0;
  for (const { sizeM: pastSizeM, figure } of near) {
    const away = Math.abs(Math.log(pastSizeM / sizeM));
    if (away > TOO_FAR_LOG) continue;
    const weight = 0.5 ** ((away / HALF_WEIGHT_LOG) ** 2);
    weights += weight;
    sum += weight * figure * (sizeM / pastSizeM) ** power;
    runs += 1;
  }
  return runs === 0 ? undefined : { value: sum / weights, runs };
}
