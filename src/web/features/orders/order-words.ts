import { dateInWords } from '../../../contract/index.js';
import type { Day, DayOrder } from '../../../core/day/index.js';

/** When an order can be packed. */
export const readyInWords = ({ readyAt }: DayOrder, day: Day): string => {
  if (readyAt === 'now') return 'from the shelf';
  return readyAt.date === day.date ? 'today, when wound' : dateInWords(readyAt.date);
};

const KINDS: Readonly<Record<DayOrder['kind'], string>> = {
  stock: 'stock set',
  custom: 'custom set',
  request: 'request',
};

export const orderKindInWords = (kind: DayOrder['kind']): string => KINDS[kind];

/** The name of a machine of the day from its id. */
export function machineNames(day: Day): (machineId: string) => string {
  const names = new Map(day.plan.machines.map(({ machineId, name }) => [machineId, name]));
  return (machineId) => names.get(machineId) ?? machineId;
}
