import { describe, expect, it } from 'vitest';
import { newId } from '../new-id.js';
import { hashOfSecret, isSecretOf, joinKey, joinToken, newSecret, splitKey, splitToken } from './secrets.js';

describe('a secret', () => {
  it('has 256 bits and is another one each time', () => {
    const secrets = Array.from({ length: 100 }, newSecret);
    expect(new Set(secrets).size).toBe(100);
    for (const secret of secrets) expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
  });

  it('is known by its hash alone', () => {
    const secret = newSecret();
    expect(isSecretOf(hashOfSecret(secret), secret)).toBe(true);
    expect(isSecretOf(hashOfSecret(secret), newSecret())).toBe(false);
    expect(isSecretOf('', secret)).toBe(false);
    expect(isSecretOf('no hash', secret)).toBe(false);
  });

  it('is hashed by SHA-256: "abc" as FIPS 180-4 (NIST, examples) has it', () => {
    expect(hashOfSecret('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});

describe('a key', () => {
  it('comes apart as it was put together, whatever signs its secret has', () => {
    for (let round = 0; round < 200; round += 1) {
      const [id, secret] = [newId(), newSecret()];
      expect(splitKey(joinKey(id, secret))).toEqual({ id, secret });
      expect(splitToken(joinToken(id, secret))).toEqual({ id, secret });
    }
  });

  it.each([
    '',
    '.',
    'twk_',
    'not.a-key',
    `${newId()}.short`,
    `${newId()}.${newSecret()}x`,
    ` ${newId()}.${newSecret()}`,
  ])('is none where it cannot be one: "%s"', (text) => {
    expect(splitKey(text)).toBeUndefined();
    expect(splitToken(text)).toBeUndefined();
  });
});
