export { type DialFit, dialFit } from './dial-fit.js';
export type { FirstString } from './first-string.js';
export {
  type Drift,
  type MachineWear,
  machineWear,
  type WearFound,
  type WearPoint,
  type WearVerdict,
} from './machine-wear.js';
export {
  type ReadOfRun,
  type ShiftWithinRuns,
  shiftsWithinRuns,
  withoutShifts,
} from './shifts-within-runs.js';
