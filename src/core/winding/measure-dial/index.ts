export { dialForPull, isPullTableUsable, type PullRow, pullAtDial } from './dial-for-pull.js';
export {
  asDialReading,
  type DialQuantity,
  type DialReading,
  type DialValue,
  type ReadOff,
  valueRead,
} from './dial-reading.js';
export { dialsToRead } from './dials-to-read.js';
export { type MeasuredTable, measuredTable } from './measured-table.js';
export { type NextDial, nextDial } from './next-dial.js';
export { type TableDrift, tableDrift } from './table-drift.js';
export { dialTableOf, withDialTable } from './table-of-machine.js';
export { type TurnsToCount, turnsToCount } from './turns-to-count.js';
