export type {
  ChangeMinutes,
  ChangeScrap,
  CuttingBench,
  DialRow,
  GearWinder,
  Machine,
  ServoWinder,
  WindingMachine,
} from './machine.js';
export type { Caution, LayerSetUp, SetPoint, SetUpSheet, WhirlCheck } from './set-up-sheet.js';
