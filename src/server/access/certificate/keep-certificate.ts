import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import type { WorkshopFault } from '../../../workshop/index.js';
import { readCertified, writeCertified } from './certificate-folder.js';
import { type CertificateFacts, certificateFacts, lookAtCertificate } from './look-at-certificate.js';
import { type CertifiedKey, makeAuthority, makeServerCertificate } from './make-certificates.js';
import { isPublicAddress, isPublicName, vouchesFor } from './name-constraints.js';

/** What lies in the folder now. */
export interface KeptCertificate {
  readonly server: CertificateFacts;
  /** Left out where the certificate came from elsewhere. */
  readonly authority?: CertificateFacts;
}

type Kept = Promise<Result<KeptCertificate, WorkshopFault>>;

/** Makes authority and server certificate; an authority that is there is kept, since devices trust it already. */
export async function makeCertificate(folder: string, hosts: readonly string[], now: Date): Kept {
  const publicAddresses = hosts.filter(isPublicAddress);
  if (publicAddresses.length > 0) return fail({ code: 'certificate.public-address', hosts: publicAddresses });
  const there = await readCertified(folder, 'authority');
  // A device would refuse names of the world outside that the authority was not made for.
  const beyond = hosts.filter((host) => isPublicName(host) && there && !vouchesFor(there.certificate, host));
  if (beyond.length > 0) return fail({ code: 'certificate.beyond-authority', hosts: beyond, folder });
  const authority = there ?? (await makeAuthority({ hosts, now }));
  if (!there) await writeCertified(folder, 'authority', authority);
  return signAnew(folder, { authority, hosts, now });
}

/** Makes a fresh server certificate by the same authority, for the same hosts. Devices need nothing new. */
export async function renewCertificate(folder: string, now: Date): Kept {
  const authority = await readCertified(folder, 'authority');
  const server = await readCertified(folder, 'server');
  if (!authority || !server) return fail({ code: 'certificate.none', folder });
  return signAnew(folder, { authority, hosts: certificateFacts(server.certificate).hosts, now });
}

/** Takes a certificate that was made elsewhere. */
export async function takeCertificate(folder: string, pair: CertifiedKey, now: Date): Kept {
  const facts = lookAtCertificate(pair, now);
  if (!facts.ok) return facts;
  await writeCertified(folder, 'server', pair);
  return succeed({ server: facts.value });
}

/** What lies in the folder. */
export async function keptCertificate(folder: string, now: Date): Kept {
  const server = await readCertified(folder, 'server');
  if (!server) return fail({ code: 'certificate.none', folder });
  const facts = lookAtCertificate(server, now);
  if (!facts.ok) return facts;
  const authority = await readCertified(folder, 'authority');
  const authorityFacts = authority && certificateFacts(authority.certificate);
  const isItsOwn = authorityFacts?.issuer === facts.value.issuer;
  return succeed({
    server: facts.value,
    ...(authorityFacts && isItsOwn ? { authority: authorityFacts } : {}),
  });
}

async function signAnew(
  folder: string,
  by: { readonly authority: CertifiedKey; readonly hosts: readonly string[]; readonly now: Date },
): Kept {
  const { authority, hosts, now } = by;
  const known = lookAtCertificate(authority, now);
  if (!known.ok) return known;
  const server = await makeServerCertificate(authority, { hosts, now });
  await writeCertified(folder, 'server', server);
  return succeed({ server: certificateFacts(server.certificate), authority: known.value });
}
