import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';

export type Person = StoredRecord<BodyOf<'person'>>;

/** Names that people would call the same have the same key: letter case, outer and double blanks do not count. */
export const nameKey = (name: string): string =>
  name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();

/** The person of a name, let in or not; people are few, so all are looked through. */
export async function personNamed(
  { records }: Pick<ReadTransaction, 'records'>,
  name: string,
): Promise<Person | undefined> {
  const people = await records.all('person');
  return people.find(({ body }) => nameKey(body.name) === nameKey(name));
}
