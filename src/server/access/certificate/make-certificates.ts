import 'reflect-metadata';
import { webcrypto } from 'node:crypto';
import { isIP } from 'node:net';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  cryptoProvider,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  Extension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { isPublicName, NAME_CONSTRAINTS, permittedNames } from './name-constraints.js';

/** A certificate and its private key, PEM. */
export interface CertifiedKey {
  readonly certificate: string;
  readonly key: string;
}

/** Devices trust the authority once; it should not have to be installed anew while they live. */
const AUTHORITY_LIFE_DAYS = 3650;
/** Browsers take no server's certificate that is good for longer than 398 days. */
const SERVER_LIFE_DAYS = 397;

/** A local authority: what devices of the shop are told to trust. It can vouch for private networks and these hosts only. */
export async function makeAuthority({
  hosts,
  now,
}: {
  readonly hosts: readonly string[];
  readonly now: Date;
}): Promise<CertifiedKey> {
  const keys = await makeKeys();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    name: `CN=Tautwork authority of this shop ${now.toISOString().slice(0, 10)}`,
    keys,
    signingAlgorithm: SIGNING,
    ...validity(now, AUTHORITY_LIFE_DAYS),
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new Extension(NAME_CONSTRAINTS, true, permittedNames(hosts.filter(isPublicName))),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return certifiedKey(certificate, keys.privateKey);
}

/** The server's own certificate, signed by the authority, for all names and addresses that it is reached by. */
export async function makeServerCertificate(
  authority: CertifiedKey,
  { hosts, now }: { readonly hosts: readonly string[]; readonly now: Date },
): Promise<CertifiedKey> {
  const issuer = new X509Certificate(authority.certificate);
  const keys = await makeKeys();
  const certificate = await X509CertificateGenerator.create({
    subject: [{ CN: [hosts[0] ?? 'tautwork'] }],
    issuer: issuer.subjectName,
    publicKey: keys.publicKey,
    signingKey: await readKey(authority.key),
    signingAlgorithm: SIGNING,
    ...validity(now, SERVER_LIFE_DAYS),
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(
        hosts.map((value) => ({ type: isIP(value) === 0 ? ('dns' as const) : ('ip' as const), value })),
      ),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  });
  return certifiedKey(certificate, keys.privateKey);
}

cryptoProvider.set(webcrypto);

const SIGNING = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
const DAY_MS = 86_400_000;

const makeKeys = () => webcrypto.subtle.generateKey(SIGNING, true, ['sign', 'verify']);

const readKey = (pem: string) =>
  webcrypto.subtle.importKey('pkcs8', PemConverter.decodeFirst(pem), SIGNING, false, ['sign']);

/** From a day before, for tablets whose clock is behind. */
const validity = (now: Date, days: number) => ({
  notBefore: new Date(now.getTime() - DAY_MS),
  notAfter: new Date(now.getTime() + days * DAY_MS),
});

async function certifiedKey(
  certificate: X509Certificate,
  privateKey: webcrypto.CryptoKey,
): Promise<CertifiedKey> {
  const key = await webcrypto.subtle.exportKey('pkcs8', privateKey);
  return {
    certificate: `${certificate.toString('pem')}\n`,
    key: `${PemConverter.encode(key, 'PRIVATE KEY')}\n`,
  };
}
