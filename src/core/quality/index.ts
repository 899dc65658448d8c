export { type ComparedGroup, comparedGroups, GROUPINGS, type Grouping } from './compared-groups.js';
export { type DriftingMachine, type Findings, type FindingsAsked, findings, readsOf } from './findings.js';
export { type HandsShare, handsShare } from './hands-share.js';
export type { OddLot } from './odd-lots.js';
export { MEASURES, type Measure, type PartSeen, type RunSeen, type RunValue, valuesOf } from './run-seen.js';
export { MOST_POINTS, type RunSeries, runSeries, type SeriesChange, type SeriesPoint } from './run-series.js';
export { type RunningCapability, runningCapability } from './running-capability.js';
export {
  type ReadingOfString,
  type StringRead,
  type StringSums,
  stringSums,
  stringsRead,
} from './string-sums.js';
export { type FirstPass, firstPass, type ReasonRow, type ScrapSeen, scrapReasons } from './yield-of-runs.js';
