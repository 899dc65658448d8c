import type { Knob } from '../dial-in/knob.js';

/** A knob with lost motion: where its dial points, and where the machine behind it truly stands. */
export interface Play {
  readonly dial: number;
  readonly stands: number;
  readonly play: number;
  readonly deadBand: number;
}

/** A knob at rest at a setting, reached from below. */
export const playFor = (knob: Knob, times: number, setting: number): Play => ({
  dial: setting,
  stands: setting - (knob.backlash * times) / 2,
  play: knob.backlash * times,
  deadBand: knob.deadBand * times,
});

/**
 * The knob after turning to a setting: the machine follows once the play is taken up (the play operator of
 * hysteresis), and not at all within the dead-band.
 */
export function turned(knob: Play, to: number): Play {
  const wanted = Math.max(to - knob.play / 2, Math.min(to + knob.play / 2, knob.stands));
  const isStuck = Math.abs(wanted - knob.stands) < knob.deadBand;
  return { ...knob, dial: to, stands: isStuck ? knob.stands : wanted };
}
