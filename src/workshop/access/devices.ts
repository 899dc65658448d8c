import { enrolDevice, revokeDevice } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import type { Device, ReadTransaction } from '../../store/index.js';
import { useCase } from '../use-case.js';
import type { Person } from './person-names.js';
import { hashOfSecret, isSecretOf, joinKey, newSecret, splitKey } from './secrets.js';

/** Enrols the device that asks. Its key goes into the device's cookie. */
export const enrolDeviceCase = useCase(enrolDevice, async ({ tx, now }, { id, name }) => {
  const known = await tx.access.device(id);
  if (known) return fail({ code: 'taken', kind: 'device', key: 'id', value: id });
  const secret = newSecret();
  const device: Device = { id, name, secretHash: hashOfSecret(secret), enrolledAt: now, revokedAt: null };
  await tx.access.addDevice(device);
  return succeed({ device: deviceView(device), secret: joinKey(id, secret) });
});

/** Ends an enrolment; whoever is signed in there by PIN is signed out. */
export const revokeDeviceCase = useCase(revokeDevice, async ({ tx, now }, { id }) => {
  const device = await tx.access.device(id);
  if (!device) return fail({ code: 'record.missing', kind: 'device', id });
  if (device.revokedAt !== null) return succeed({ id, revokedAt: device.revokedAt });
  await tx.access.revokeDevice(id, now);
  await tx.access.revokeSessions({ deviceId: id }, now);
  return succeed({ id, revokedAt: now });
});

/** The device of a key, where it is enrolled. */
export async function deviceOfKey(
  { access }: Pick<ReadTransaction, 'access'>,
  text: string | undefined,
): Promise<Device | undefined> {
  const key = text === undefined ? undefined : splitKey(text);
  const device = key && (await access.device(key.id));
  if (!device || device.revokedAt !== null) return undefined;
  return isSecretOf(device.secretHash, key.secret) ? device : undefined;
}

/** Who can sign in on an enrolled device: people who are let in and have a PIN. */
export async function peopleWithPin({
  access,
  records,
}: Pick<ReadTransaction, 'access' | 'records'>): Promise<readonly Person[]> {
  const people = (await records.all('person')).filter(({ body }) => body.active);
  const pins = await Promise.all(people.map(({ id }) => access.credential(id, 'pin')));
  return people.filter((_, at) => pins[at] !== undefined);
}

/** All of a device but the hash of its key. */
export const deviceView = ({ id, name, enrolledAt, revokedAt }: Device) => ({
  id,
  name,
  enrolledAt,
  revokedAt,
});
