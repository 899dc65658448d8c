import type { AnyUseCase } from '../use-case.js';
import { revokeDeviceCase } from './devices.js';
import { changePersonCase, invitePersonCase, makeSignInLinkCase } from './people.js';
import { revokeSessionCase, revokeSessionsCase } from './revoke-sessions.js';
import { saveSightCase } from './sight.js';
import { makeTokenCase, revokeTokenCase } from './tokens.js';

/** What can be asked about who comes in. Enrolling a device is not among them: its key goes into a cookie, so the way in
 * answers that itself. */
export const ACCESS_USE_CASES: readonly AnyUseCase[] = [
  invitePersonCase,
  makeSignInLinkCase,
  changePersonCase,
  saveSightCase,
  revokeDeviceCase,
  revokeSessionCase,
  revokeSessionsCase,
  makeTokenCase,
  revokeTokenCase,
];
