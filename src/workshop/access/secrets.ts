import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** 256 bits of the operating system's chance: no one guesses it, so a fast hash keeps it safe. */
const SECRET_BYTES = 32;

/** A fresh secret for a session, a device, a link or a token, as letters that fit cookies and addresses. */
export const newSecret = (): string => randomBytes(SECRET_BYTES).toString('base64url');

/** What of a secret is kept. For secrets made by `newSecret` only: what people choose needs the slow hash. */
export const hashOfSecret = (secret: string): string => createHash('sha256').update(secret).digest('hex');

/** Whether a secret is the one of this hash, in a time that tells nothing of it. */
export function isSecretOf(hash: string, secret: string): boolean {
  const kept = Buffer.from(hash, 'hex');
  const shown = Buffer.from(hashOfSecret(secret), 'hex');
  return kept.length === shown.length && timingSafeEqual(kept, shown);
}

/** Id and secret in one text, `ID.SECRET`: what cookies hold. */
export const joinKey = (id: string, secret: string): string => `${id}.${secret}`;

/** The halves of such a text; undefined where it cannot be one. */
export function splitKey(text: string): { readonly id: string; readonly secret: string } | undefined {
  const [, id, secret] = KEY.exec(text) ?? [];
  return id !== undefined && secret !== undefined ? { id, secret } : undefined;
}

/** A token for scripts, `twk_ID_SECRET`: begins so that a search through files finds one that was left lying about. */
export const joinToken = (id: string, secret: string): string => `${TOKEN_MARK}${id}_${secret}`;

/** The halves of a token; undefined where it cannot be one. */
export const splitToken = (text: string): ReturnType<typeof splitKey> =>
  text.startsWith(TOKEN_MARK) ? splitKey(text.slice(TOKEN_MARK.length).replace('_', '.')) : undefined;

const TOKEN_MARK = 'twk_';
const KEY = /^([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\.([\w-]{43})$/;
