import {
  saveBin as bin,
  saveInstrument as instrument,
  saveMachine as machine,
  saveSet as set,
  saveSettings as settings,
  saveTuning as tuning,
  saveWire as wire,
} from '../../contract/index.js';
import { nameIsItsOwn, saving } from './save-record.js';
import {
  binKnowsItsKind,
  instrumentIsWhole,
  machineIsSound,
  setIsPlausible,
  settingsFit,
  wireFits,
} from './shop-checks.js';

export const saveSettings = saving(settings, 'settings', [settingsFit]);
export const saveWire = saving(wire, 'wire', [wireFits]);
export const saveMachine = saving(machine, 'machine', [machineIsSound]);
export const saveBin = saving(bin, 'bin', [binKnowsItsKind]);
export const saveInstrument = saving(instrument, 'instrument', [
  nameIsItsOwn('instrument'),
  instrumentIsWhole,
]);
export const saveTuning = saving(tuning, 'tuning', [nameIsItsOwn('tuning')]);
export const saveSet = saving(set, 'set', [nameIsItsOwn('set'), setIsPlausible]);
