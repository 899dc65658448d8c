import { LEAST_PASSWORD } from '../../contract/index.js';
import type { WorkshopFault } from '../use-case.js';
import { nameKey } from './person-names.js';

/** Why a password is too easily guessed; undefined where nothing is found. */
export function passwordFault(password: string, personName: string): WorkshopFault | undefined {
  const plain = password.normalize('NFKC').toLowerCase();
  const code = 'access.password-weak';
  if ([...plain].length < LEAST_PASSWORD) return { code, because: 'short', least: LEAST_PASSWORD };
  if (new Set(plain).size < LEAST_DIFFERENT) return { code, because: 'few-signs', least: LEAST_DIFFERENT };
  if (plain.includes(nameKey(personName)) && plain.length < nameKey(personName).length + LEAST_PASSWORD) {
    return { code, because: 'name' };
  }
  return undefined;
}

/** Why a PIN is one of the first that anybody tries: one digit over and over, or counting up or down. */
export function pinFault(pin: string): WorkshopFault | undefined {
  const steps = [...pin].slice(1).map((digit, at) => Number(digit) - Number(pin[at]));
  const isEven = steps.every((step) => step === steps[0]) && Math.abs(steps[0] ?? 0) <= 1;
  return isEven ? { code: 'access.pin-weak' } : undefined;
}

const LEAST_DIFFERENT = 5;
