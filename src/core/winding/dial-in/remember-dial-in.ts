import { grouped } from '../../foundation/index.js';
import type { DialIn, DialInStep } from './dial-in.js';
import { settled } from './doubtful-string.js';
import type { PastDialIn, PastPosition, PastString } from './past-dial-in.js';
import { meanOf } from './pooled-spread.js';

/** What a dial-in that is over leaves to later ones: settings, strings, and how right overrides were. */
export function rememberDialIn(dialIn: DialIn, run: Pick<PastDialIn, 'machineId' | 'family'>): PastDialIn {
  const byPosition = grouped(dialIn.steps, ({ position }) => String(position));
  return {
    machineId: run.machineId,
    family: run.family,
    responseMPerUnit: dialIn.knob.responseMPerUnit,
    positions: dialIn.first.belief.referenceSettings.map((reckonedSetting, position) => ({
      reckonedSetting,
      ...seenAt(byPosition.get(String(position)) ?? [], reckonedSetting, dialIn),
    })),
  };
}

function seenAt(
  steps: readonly DialInStep[],
  reckonedSetting: number,
  { first }: DialIn,
): Pick<PastPosition, 'strings' | 'overrideErrorsM'> {
  const strings: PastString[] = [];
  const overrideErrorsM: number[] = [];
  let setting = reckonedSetting;
  let awaitsOverride = false;
  for (const step of steps) {
    const last = strings.at(-1);
    if (step.kind === 'set') {
      setting = step.setting;
      awaitsOverride = step.chosenBy === 'winder';
    } else if (step.kind === 'again' && last) {
      strings[strings.length - 1] = { ...last, errorsM: settled(last.errorsM, step.errorsM, first.noise) };
    } else if (step.kind === 'string') {
      strings.push({ setting, errorsM: step.errorsM });
      if (awaitsOverride) overrideErrorsM.push(meanOf(step.errorsM));
      awaitsOverride = false;
    }
  }
  return { strings, overrideErrorsM };
}
