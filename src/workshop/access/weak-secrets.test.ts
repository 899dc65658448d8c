import { describe, expect, it } from 'vitest';
import { passwordFault, pinFault } from './weak-secrets.js';

describe('a password', () => {
  it.each([
    ['nine char', 'short'],
    ['aaaaaaaaaaaa', 'few-signs'],
    ['ababababababab', 'few-signs'],
    ['Marten Holt 1', 'name'],
  ])('"%s" is refused as %s', (password, because) => {
    expect(passwordFault(password, 'Marten Holt')).toMatchObject({ code: 'access.password-weak', because });
  });

  it.each(['seven copper kettles', 'marten holt keeps forty geese', 'Øystercatcher7'])(
    '"%s" is taken',
    (password) => {
      expect(passwordFault(password, 'Marten Holt')).toBeUndefined();
    },
  );
});

describe('a PIN', () => {
  it.each(['0000', '1234', '4321', '99999999', '23456'])(
    '%s is among the first that anybody tries',
    (pin) => {
      expect(pinFault(pin)).toEqual({ code: 'access.pin-weak' });
    },
  );

  it.each(['8264', '1122', '1357', '90210'])('%s is taken', (pin) => {
    expect(pinFault(pin)).toBeUndefined();
  });
});
