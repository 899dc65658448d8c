import type { Transaction } from '../../store/index.js';
import { after, LINK_LIFE_MS } from './lifetimes.js';
import { hashOfSecret, newSecret } from './secrets.js';

/** A link that lets one person in once. Only its hash is kept. */
export interface SignInLink {
  readonly secret: string;
  readonly expiresAt: string;
}

/** Makes a person's one-time link; one made before no longer works. */
export async function newSignInLink(
  { access }: Pick<Transaction, 'access'>,
  {
    personId,
    from,
    now,
  }: { readonly personId: string; readonly from: keyof typeof LINK_LIFE_MS; readonly now: string },
): Promise<SignInLink> {
  const secret = newSecret();
  const expiresAt = after(now, LINK_LIFE_MS[from]);
  await access.putCredential({ personId, kind: 'sign-in-link', secretHash: hashOfSecret(secret), expiresAt });
  return { secret, expiresAt };
}
