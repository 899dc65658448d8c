import type { InputNamed, OutputNamed } from '../../../contract/index.js';

export type Preview = OutputNamed<'import-orders'>['preview'];
export type Mapping = NonNullable<InputNamed<'import-orders'>['mapping']>;
export type Column = keyof Mapping;

/** What a heading means; undefined where it is left aside. */
export const meaningOf = (mapping: Mapping, heading: string): Column | undefined =>
  (Object.keys(mapping) as Column[]).find((column) => mapping[column] === heading);

/** The mapping with a heading given another meaning; the heading that had it before is left aside. */
export function withMeaning(mapping: Mapping, heading: string, column: Column): Mapping {
  const others = Object.entries(mapping).filter(([, named]) => named !== heading);
  return { ...Object.fromEntries(others), [column]: heading };
}

/** How many orders of a preview come to each outcome. */
export const outcomesOf = ({
  orders,
}: Preview): Readonly<Record<Preview['orders'][number]['outcome'], number>> => {
  const counts = { new: 0, changed: 0, same: 0, fault: 0 };
  for (const { outcome } of orders) counts[outcome] += 1;
  return counts;
};
