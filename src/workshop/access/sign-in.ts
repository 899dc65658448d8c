import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { Session, Transaction } from '../../store/index.js';
import type { WorkshopFault } from '../use-case.js';
import type { AccessParts } from './access-parts.js';
import { forgiveAttempts } from './attempts.js';
import { checkClaim, type Proven } from './check-password.js';
import { deviceOfKey } from './devices.js';
import { nameKey, personNamed } from './person-names.js';
import { openSession, type SignedIn } from './sessions.js';

/** Signs in at a desk, with name and password. */
export async function signIn(
  parts: AccessParts,
  { name, password }: { readonly name: string; readonly password: string },
): Promise<Result<SignedIn, WorkshopFault>> {
  const person = await parts.store.read((tx) => personNamed(tx, name));
  const claim = { kind: 'password', secret: password, person, asked: nameKey(name) } as const;
  const proven = await checkClaim(parts, claim);
  if (!proven.ok) return proven;
  return begin(parts, proven.value, { secret: password, via: 'password' });
}

/** Signs in on an enrolled device, with a PIN. */
export async function pinSignIn(
  parts: AccessParts,
  asked: { readonly device: string | undefined; readonly personId: string; readonly pin: string },
): Promise<Result<SignedIn, WorkshopFault>> {
  const { personId, pin } = asked;
  const { device, person } = await parts.store.read(async (tx) => ({
    device: await deviceOfKey(tx, asked.device),
    person: await tx.records.get('person', personId),
  }));
  if (!device) return fail({ code: 'access.device-not-enrolled' });
  const proven = await checkClaim(parts, { kind: 'pin', secret: pin, person, asked: personId });
  if (!proven.ok) return proven;
  return begin(parts, proven.value, { secret: pin, via: 'pin', deviceId: device.id });
}

/** Ends a session by its own wish. */
export const signOut = ({ store, clock }: AccessParts, sessionId: string): Promise<void> =>
  store.write(({ access }) => access.revokeSession(sessionId, clock.now()));

interface Beginning {
  readonly secret: string;
  readonly via: Session['via'];
  readonly deviceId?: string;
}

/** Between check and session the person may have been let go, the device lost or the password changed: look again. */
async function begin(
  parts: AccessParts,
  proven: Proven,
  { secret, via, deviceId }: Beginning,
): Promise<Result<SignedIn, WorkshopFault>> {
  const { credential, match, subject } = proven;
  const renewed = match.outdated ? await parts.slowHash.hash(secret) : undefined;
  return parts.store.write(async (tx) => {
    if (!(await isStillProven(tx, proven, deviceId)))
      return fail({ code: 'access.sign-in-refused', with: credential.kind });
    await forgiveAttempts(tx, subject);
    if (renewed !== undefined) await tx.access.putCredential({ ...credential, secretHash: renewed });
    const id = parts.newId();
    const now = parts.clock.now();
    const { person } = proven;
    return succeed(
      await openSession(tx, { person, via, id, now, ...(deviceId === undefined ? {} : { deviceId }) }),
    );
  });
}

async function isStillProven(
  { access, records }: Transaction,
  { person, credential }: Proven,
  deviceId: string | undefined,
): Promise<boolean> {
  const kept = await access.credential(person.id, credential.kind);
  const device = deviceId === undefined ? undefined : await access.device(deviceId);
  const isActive = (await records.get('person', person.id))?.body.active === true;
  return isActive && kept?.secretHash === credential.secretHash && !device?.revokedAt;
}
