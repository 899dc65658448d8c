import Type from 'typebox';
import { PERMISSIONS, ROLES, TOKEN_SCOPES } from '../permissions.js';
import { id, instant, sight } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, oneOf, text, wholeFrom } from '../schemas/pieces.js';
import { secretText } from '../schemas/secret.js';
import { defineUseCase } from '../use-case.js';

export const LEAST_PASSWORD = 10;
const MOST_PASSWORD = 200;

const password = secretText(`at least ${LEAST_PASSWORD} letters, digits or signs`, {
  minLength: LEAST_PASSWORD,
  maxLength: MOST_PASSWORD,
});
/** What is typed as the present password: any length, so that only the check itself refuses it. */
const presentPassword = secretText('the password as it is now', { maxLength: MOST_PASSWORD });
const pin = secretText('4 to 8 digits', { pattern: '^[0-9]{4,8}$' });

const personName = Type.String({ minLength: 1, maxLength: 80, description: 'what the person signs in with' });
const roles = Type.Array(oneOf(ROLES), { minItems: 1, uniqueItems: true });
const personRecord = recordSchema('person');
const link = closed({
  secret: secretText('what the one-time link holds after its #; shown this once'),
  expiresAt: instant,
});
const ended = closed({ id, revokedAt: instant });
const tokenView = closed({
  id,
  name: text(),
  personId: id,
  scopes: Type.Array(oneOf(PERMISSIONS)),
  createdAt: instant,
  expiresAt: Type.Union([instant, Type.Null()]),
  revokedAt: Type.Union([instant, Type.Null()]),
});
const deviceView = closed({
  id,
  name: text(),
  enrolledAt: instant,
  revokedAt: Type.Union([instant, Type.Null()]),
});
const via = oneOf(['password', 'pin', 'sign-in-link']);

export const invitePerson = defineUseCase({
  name: 'invite-person',
  summary: 'Takes a person into the shop and makes the one-time link for the first sign-in',
  permission: 'people.manage',
  path: '/people/invite',
  input: closed({ id, name: personName, roles }),
  output: closed({ person: personRecord, link }),
});

export const makeSignInLink = defineUseCase({
  name: 'make-sign-in-link',
  summary: 'Makes a new one-time link for a person who lost the last one or forgot the password',
  permission: 'people.manage',
  path: '/people/sign-in-link',
  input: closed({ personId: id }),
  output: closed({ link }),
});

export const changePerson = defineUseCase({
  name: 'change-person',
  summary: "Changes a person's name or roles, or lets the person in no more",
  permission: 'people.manage',
  path: '/people/change',
  input: closed({
    id,
    expectedVersion: wholeFrom(1, 'the version that was seen'),
    name: Type.Optional(personName),
    roles: Type.Optional(roles),
    active: Type.Optional(Type.Boolean()),
  }),
  output: personRecord,
});

export const saveSight = defineUseCase({
  name: 'save-sight',
  summary: 'Settles in which units, and by whose customs of dates and numbers, one sees figures oneself',
  permission: 'events.read',
  path: '/me/sight',
  input: sight,
  output: sight,
});

export const enrolDevice = defineUseCase({
  name: 'enrol-device',
  summary: 'Enrols the tablet or computer that asks, so that people may sign in on it with a PIN',
  permission: 'people.manage',
  path: '/devices/enrol',
  input: closed({ id, name: text('as people call it') }),
  output: closed({
    device: deviceView,
    secret: secretText('what the device shows from now on; the server puts it into its cookie'),
  }),
});

export const revokeDevice = defineUseCase({
  name: 'revoke-device',
  summary: 'Ends the enrolment of a device and everyone who is signed in on it by PIN',
  permission: 'people.manage',
  path: '/devices/revoke',
  input: closed({ id }),
  output: ended,
});

export const revokeSession = defineUseCase({
  name: 'revoke-session',
  summary: "Signs a session out: one's own, or anyone's where one keeps the people",
  permission: 'account.own',
  path: '/sessions/revoke',
  input: closed({ id }),
  output: ended,
});

export const revokeSessions = defineUseCase({
  name: 'revoke-sessions',
  summary: 'Signs a person out everywhere: oneself, or anyone where one keeps the people',
  permission: 'account.own',
  path: '/sessions/revoke-all',
  input: closed({ personId: id }),
  output: closed({ personId: id, revokedAt: instant }),
});

export const makeToken = defineUseCase({
  name: 'make-token',
  summary: 'Makes a token with which a script may do some of what a person may; it is shown this once',
  permission: 'people.manage',
  path: '/tokens/make',
  input: closed({
    id,
    personId: id,
    name: text('what the script is for'),
    scopes: Type.Array(oneOf(TOKEN_SCOPES), { minItems: 1, uniqueItems: true }),
    expiresAt: Type.Optional(instant),
  }),
  output: closed({ token: tokenView, secret: secretText('the whole token, `twk_…`; shown this once') }),
});

export const revokeToken = defineUseCase({
  name: 'revoke-token',
  summary: 'Ends a token at once',
  permission: 'people.manage',
  path: '/tokens/revoke',
  input: closed({ id }),
  output: ended,
});

const thisDevice = closed({
  device: closed({ id, name: text() }),
  people: Type.Array(closed({ id, name: text() }), { description: 'who may sign in here with a PIN' }),
});
const me = closed({
  by: text('as the journal names whoever asks'),
  person: closed({ id, name: text(), roles: Type.Array(oneOf(ROLES)) }),
  permissions: Type.Array(oneOf(PERMISSIONS)),
  sight: Type.Optional(sight),
  session: Type.Optional(closed({ id, via, expiresAt: instant })),
});

/** What the server asks and answers about signing in. These are no use cases: they come before anyone is known, or must
 * remember a failure although nothing was done. */
export const ACCESS_SCHEMAS = {
  signIn: closed({ name: Type.String({ minLength: 1, maxLength: 200 }), password: presentPassword }),
  pinSignIn: closed({ personId: id, pin: secretText('the PIN', { maxLength: 20 }) }),
  setPassword: closed({ link: secretText('what stands after the # of the one-time link'), password }),
  changePassword: closed({ password: presentPassword, newPassword: password }),
  setPin: closed({ password: presentPassword, pin }),
  signedIn: closed({
    person: closed({ id, name: text(), roles: Type.Array(oneOf(ROLES)) }),
    permissions: Type.Array(oneOf(PERMISSIONS), { description: 'what may be done in this session' }),
    session: closed({ id, via, expiresAt: instant }),
  }),
  me,
  done: closed({ done: Type.Literal(true) }),
  thisDevice,
  who: closed({
    me: Type.Optional(me),
    device: Type.Optional(thisDevice),
  }),
  enrolled: closed({ device: deviceView }),
  devices: closed({ items: Type.Array(deviceView) }),
  tokens: closed({ items: Type.Array(tokenView) }),
  sessions: closed({
    items: Type.Array(
      closed({
        id,
        personId: id,
        via,
        deviceId: Type.Union([id, Type.Null()]),
        createdAt: instant,
        expiresAt: instant,
      }),
      { description: 'open ones' },
    ),
  }),
} as const;
