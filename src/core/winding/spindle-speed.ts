import { fail, type Result, succeed } from '../foundation/index.js';

export type SpindleLimit = 'machine' | 'wire-speed' | 'whirl' | 'record';

export interface SpindleSpeed {
  readonly rpm: number;
  readonly limitedBy: SpindleLimit;
}

export interface SpindleFault {
  readonly code: 'winding.spindle-too-fast';
  /** The machine's slowest, which is still faster than ... */
  readonly slowestRpm: number;
  /** ... what this allows. */
  readonly limitedBy: 'wire-speed' | 'whirl';
  readonly limitRpm: number;
}

/**
 * Spindle speed, turns per minute: the machine's fastest, held down by how fast the wrap wire may run
 * through the guide (n times the wire of one turn), by whirl, and by what the shop ran before where there is
 * a record; rounded down to whole steps. It is a figure for a person to set: nothing here drives a machine.
 */
export function spindleSpeed(limits: {
  readonly machineRpm: { readonly least: number; readonly most: number };
  readonly wireSpeedLimitMPerS: number;
  readonly wirePerTurnM: number;
  /** Fastest that stays clear of whirl; left out where nothing bounds it. */
  readonly whirlRpm?: number;
  readonly recordRpm?: number;
  readonly stepRpm: number;
}): Result<SpindleSpeed, SpindleFault> {
  const { least: slowestRpm, most: fastestRpm } = limits.machineRpm;
  const wireRpm = (60 * limits.wireSpeedLimitMPerS) / limits.wirePerTurnM;
  const whirlRpm = limits.whirlRpm ?? Number.POSITIVE_INFINITY;
  if (Math.min(wireRpm, whirlRpm) < slowestRpm) {
    const limitedBy = whirlRpm < wireRpm ? 'whirl' : 'wire-speed';
    const limitRpm = Math.min(wireRpm, whirlRpm);
    return fail({ code: 'winding.spindle-too-fast', slowestRpm, limitedBy, limitRpm });
  }
  const candidates: readonly (readonly [SpindleLimit, number])[] = [
    ['machine', fastestRpm],
    ['wire-speed', wireRpm],
    ['whirl', whirlRpm],
    ['record', Math.max(slowestRpm, limits.recordRpm ?? Number.POSITIVE_INFINITY)],
  ];
  const [limitedBy, limitRpm] = candidates.reduce((best, other) => (other[1] < best[1] ? other : best));
  const steppedRpm = Math.floor(limitRpm / limits.stepRpm) * limits.stepRpm;
  return succeed({ rpm: Math.max(slowestRpm, steppedRpm), limitedBy });
}
