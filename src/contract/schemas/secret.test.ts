import Type from 'typebox';
import { describe, expect, it } from 'vitest';
import { closed, text } from './pieces.js';
import { hasSecrets, LEFT_OUT, secretText, withoutSecrets } from './secret.js';

const withKey = closed({ id: text(), key: Type.Optional(secretText('key')) });
const schema = closed({
  name: text(),
  pin: secretText('PIN'),
  keys: Type.Array(withKey),
  inner: closed({ password: secretText('password'), kept: Type.Number() }),
  either: Type.Union([closed({ kind: text() }), withKey]),
});

describe('a value without its secrets', () => {
  it('holds all else, at every depth', () => {
    const whole = {
      name: 'Wren',
      pin: '8264',
      keys: [{ id: 'a', key: 'k1' }, { id: 'b' }],
      inner: { password: 'pw', kept: 3 },
      either: { id: 'c', key: 'k2' },
    };
    expect(withoutSecrets(schema, whole)).toEqual({
      name: 'Wren',
      pin: LEFT_OUT,
      keys: [{ id: 'a', key: LEFT_OUT }, { id: 'b' }],
      inner: { password: LEFT_OUT, kept: 3 },
      either: { id: 'c', key: LEFT_OUT },
    });
  });

  it('is the value itself where nothing is secret', () => {
    const plain = closed({ at: text(), list: Type.Array(Type.Number()), open: Type.Object({}) });
    const value = { at: 'x', list: [1, 2], open: { any: { thing: null } } };
    expect(withoutSecrets(plain, value)).toEqual(value);
    expect(withoutSecrets(Type.String(), 'word')).toBe('word');
    expect(withoutSecrets(plain, undefined)).toBeUndefined();
  });
});

describe('a schema', () => {
  it('says whether it has a secret, wherever it lies', () => {
    expect(hasSecrets(schema)).toBe(true);
    expect(hasSecrets(closed({ keys: Type.Array(withKey) }))).toBe(true);
    expect(hasSecrets(closed({ either: Type.Union([text(), withKey]) }))).toBe(true);
    expect(hasSecrets(closed({ id: text(), list: Type.Array(Type.Number()) }))).toBe(false);
  });
});
