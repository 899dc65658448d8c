/** What a winder turns to move the diameter: in whatever unit its machine has (a force, a number on a dial). */
export interface Knob {
  readonly least: number;
  readonly most: number;
  /** Settings are whole multiples of this from `least`. */
  readonly step: number;
  /** Moves smaller than this the machine does not follow. */
  readonly deadBand: number;
  /** Lost motion when the direction of turning changes. */
  readonly backlash: number;
  /** Diameter gained by one unit of setting, as reckoned beforehand; mostly negative. */
  readonly responseMPerUnit: number;
  /** How far off its mark a move lands, one standard deviation, as a share of the move. */
  readonly roughness: number;
}

/** A move of the knob. */
export interface KnobMove {
  readonly to: number;
  readonly by: number;
  /** Where to turn first, so that the setting is reached from below and all lost motion is taken up. */
  readonly past?: number;
}

/** The setting nearest to a wish that the knob can be put to. */
export function nearestSetting(knob: Knob, wish: number): number {
  const { least, most, step } = knob;
  const steps = Math.round((Math.min(most, Math.max(least, wish)) - least) / step);
  const whole = Math.floor((most - least) / step + 1e-9);
  return least + Math.min(steps, whole) * step;
}

/** How far a setting may be from one that can be reached and still count as the same. */
export const sameSetting = (knob: Knob, one: number, other: number): boolean =>
  Math.abs(one - other) < knob.step / 2;

/**
 * The move to a setting. With lost motion, every setting is reached from below after a run-up that is longer than it:
 * the machine then always stands on the same flank and does not stick, however small the move. Common practice, no
 * source.
 */
export function moveTo(knob: Knob, from: number, to: number): KnobMove {
  const by = to - from;
  const lost = knob.backlash + knob.deadBand;
  if (lost <= 0) return { to, by };
  return {
    to,
    by,
    past: Math.max(knob.least, nearestSetting(knob, Math.min(from, to) - 1.5 * lost - knob.step)),
  };
}

/** Variance that the roughness of a move adds to the offset, m^2. */
export const moveVariance = (knob: Knob, responseMPerUnit: number, by: number): number =>
  (knob.roughness * responseMPerUnit * by) ** 2;
