import type { AlloyId } from '../materials/index.js';
import type { CoreWire } from '../string/index.js';

/** What a machine was set to in a run whose strings were good. Tensions in N. */
export interface PastRun {
  readonly machineId: string;
  /** As the floor calls it, and the id of its record, so that it can be looked up. */
  readonly name?: string;
  readonly runId?: string;
  /** Day on which it ended. */
  readonly date?: string;
  readonly recipeId?: string;
  readonly core: {
    readonly shape: CoreWire['shape'];
    readonly sizeM: number;
    readonly tensionN?: number;
    /** Lot of the wire. */
    readonly lot?: string;
  };
  /** From the core outwards. */
  readonly layers: readonly {
    readonly alloy: AlloyId;
    readonly wireDiameterM: number;
    readonly tensionN?: number;
    readonly spindleRpm?: number;
    readonly lot?: string;
  }[];
}
