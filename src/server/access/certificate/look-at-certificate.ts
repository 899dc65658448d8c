import { createPrivateKey, X509Certificate } from 'node:crypto';
import { isIPv6 } from 'node:net';
import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import type { WorkshopFault } from '../../../workshop/index.js';

/** What there is to know of a certificate. */
export interface CertificateFacts {
  /** Names and addresses that it is for. */
  readonly hosts: readonly string[];
  readonly notAfter: Date;
  /** SHA-256 over all of it, in pairs of hexadecimal digits: what a person compares. */
  readonly fingerprint: string;
  readonly issuer: string;
}

/** Browsers begin to look at it askance when it has run out; renewing takes a minute. */
const RENEW_BEFORE_DAYS = 30;

/** Looks at a certificate and its key: can both be read, do they belong together, is it good now? */
export function lookAtCertificate(
  { certificate, key }: { readonly certificate: string; readonly key: string },
  now: Date,
): Result<CertificateFacts, WorkshopFault> {
  const read = readBoth(certificate, key);
  if (!read) return fail({ code: 'certificate.unreadable' });
  const facts = factsOf(read.certificate);
  if (!read.certificate.checkPrivateKey(read.key)) return fail({ code: 'certificate.other-key' });
  if (facts.notAfter <= now)
    return fail({ code: 'certificate.run-out', notAfter: facts.notAfter.toISOString() });
  return succeed(facts);
}

/** Whether it should be renewed now. */
export const isDueForRenewal = ({ notAfter }: CertificateFacts, now: Date): boolean =>
  notAfter.getTime() - now.getTime() < RENEW_BEFORE_DAYS * 86_400_000;

/** The facts of a certificate by itself. */
export const certificateFacts = (pem: string): CertificateFacts => factsOf(new X509Certificate(pem));

function readBoth(certificate: string, key: string) {
  try {
    return { certificate: new X509Certificate(certificate), key: createPrivateKey(key) };
  } catch {
    return undefined;
  }
}

const factsOf = ({ subjectAltName, validTo, fingerprint256, issuer }: X509Certificate): CertificateFacts => ({
  hosts: (subjectAltName ?? '')
    .split(', ')
    .map((name) => shortest(name.replace(/^(DNS|IP Address):/, '')))
    .filter((name) => name !== ''),
  notAfter: new Date(validTo),
  fingerprint: fingerprint256,
  issuer,
});

/** An address of IPv6 in its shortest writing (RFC 5952), as browsers have it: `fd00::20`, not `FD00:0:0:0:0:0:0:20`. */
const shortest = (host: string): string =>
  isIPv6(host) ? new URL(`http://[${host}]`).hostname.slice(1, -1) : host;
