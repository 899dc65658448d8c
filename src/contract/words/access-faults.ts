import { LEAST_PASSWORD } from '../use-cases/access.js';
import { listInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';

/** Why someone is not let in, or may not be let in. None tells more than whoever asks may know. */
export const ACCESS_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'access.sign-in-refused': (fault) => ({
    what: `That ${fault.with === 'pin' ? 'person and PIN' : 'name and password'} do not belong together.`,
    mend: `${attemptsLeftInWords(Number(fault.attemptsLeft ?? 0))} If it is forgotten, the owner makes a new one-time link.`,
  }),
  'access.locked': ({ lockedUntil }) => ({
    what: 'There were too many wrong attempts in a row.',
    mend: `Wait until ${minuteInWords(lockedUntil)}, or ask the owner for a one-time link, which opens the lock.`,
  }),
  'access.session-over': {
    what: 'The session has ended, or was signed out from elsewhere.',
    mend: 'Sign in again.',
  },
  'access.token-refused': {
    what: 'The token is not known, has run out, or was ended.',
    mend: 'Check that all of it was copied after `Bearer `, or ask the owner for a new one.',
  },
  'access.link-refused': {
    what: 'The one-time link is not known, was used already, or has run out.',
    mend: 'Ask the owner for a new one. Whoever sits at the server makes one with `tautwork sign-in-link`.',
  },
  'access.device-not-enrolled': {
    what: 'A PIN is taken only on a device of the shop, and this one is not enrolled.',
    mend: 'Sign in with name and password, or let the owner enrol the device.',
  },
  'access.session-needed': {
    what: 'Only a person who is signed in can do this, not a token.',
    mend: 'Sign in with name and password.',
  },
  'access.password-weak': ({ because }) => ({
    what: WEAK_PASSWORDS[String(because)] ?? 'The password is easily guessed.',
    mend: `Take at least ${LEAST_PASSWORD} letters, digits or signs; a few words that do not belong together are good.`,
  }),
  'access.pin-weak': {
    what: 'That PIN is one of the first that anybody tries: one digit over and over, or counting up or down.',
    mend: 'Take other digits.',
  },
  'access.name-taken': ({ name }) => ({
    what: `There is already a person called "${String(name)}".`,
    mend: 'Write the name so that it can be told apart, for instance with the first letter of the family name.',
  }),
  'access.person-inactive': ({ name }) => ({
    what: `${String(name)} is let in no more.`,
    mend: 'Let the person in again first.',
  }),
  'access.person-unknown': ({ name, known }) => ({
    what: name === null ? 'There is no owner who is let in.' : `There is nobody called "${String(name)}".`,
    mend:
      Array.isArray(known) && known.length > 0
        ? `There are: ${listed(known)}.`
        : 'Start the server once: it makes the owner.',
  }),
  'access.last-owner': ({ name }) => ({
    what: `${String(name)} is the only owner, and a shop without one could let nobody in.`,
    mend: 'Make someone else an owner first.',
  }),
  'access.scopes-too-wide': ({ name, beyond }) => ({
    what: `${String(name)} may not do this, so a token of theirs may not either: ${listed(beyond)}.`,
    mend: 'Leave those scopes out, or give the person a role that has them.',
  }),
  'access.expiry-past': ({ expiresAt }) => ({
    what: `The token would have run out already, at ${minuteInWords(expiresAt)}.`,
    mend: 'Give a moment to come, or leave it out.',
  }),
  'access.cross-origin': {
    what: 'The request came from a page of another place, so it was not done.',
    mend: 'Work on the page of this shop. A script sends a token instead of a cookie.',
  },
  'access.unknown-host': ({ host }) => ({
    what: `This server does not go by the name "${String(host)}".`,
    mend: 'Use one of the addresses that it was started with.',
  }),
  'access.network-without-tls': ({ host }) => ({
    what: `The server will not listen on ${String(host)} in plain http: anyone on that network could read passwords.`,
    mend: 'Make a certificate with `tautwork certificate make`, or let the server listen on this machine alone.',
  }),
  'certificate.none': ({ folder }) => ({
    what: `There is no certificate in ${String(folder)}.`,
    mend: 'Make one with `tautwork certificate make`, or take one from files with `tautwork certificate use`.',
  }),
  'certificate.unreadable': {
    what: 'The certificate or its key cannot be read.',
    mend: 'Give both as PEM files, the key without a password.',
  },
  'certificate.other-key': {
    what: 'The key does not belong to the certificate.',
    mend: 'Give the key that the certificate was made with.',
  },
  'certificate.run-out': ({ notAfter }) => ({
    what: `The certificate ran out at ${minuteInWords(notAfter)}.`,
    mend: 'Renew it with `tautwork certificate renew`, or take a new one from files.',
  }),
  'certificate.public-address': ({ hosts }) => ({
    what: `The shop's own authority vouches for private networks only, and these addresses are of the world outside: ${listed(hosts)}.`,
    mend: 'Give the address that the server has in the shop, or take a certificate from a public authority.',
  }),
  'certificate.beyond-authority': ({ hosts, folder }) => ({
    what: `The shop's authority was not made for these names, and devices would refuse them: ${listed(hosts)}.`,
    mend: `Use a name that ends in .local or .lan, or move the files of ${String(folder)} away, make a new authority and install it on every device.`,
  }),
};

const listed = (items: unknown): string => listInWords((items as readonly unknown[]).map(String));

const WEAK_PASSWORDS: Readonly<Record<string, string>> = {
  short: 'The password is too short.',
  'few-signs': 'The password repeats a few signs only.',
  name: 'The password is little more than the name.',
};

const attemptsLeftInWords = (left: number): string =>
  left === 0
    ? 'No more attempts are free now: the next must wait.'
    : left === 1
      ? 'One more attempt is free, then it locks for a while.'
      : `${left} more attempts are free, then it locks for a while.`;

/** UTC, since the words cannot know where the reader is. */
const minuteInWords = (moment: unknown): string =>
  String(moment).replace(/^(.*)T(\d\d:\d\d).*$/, '$1 $2 UTC');
