import { BlockList, isIP } from 'node:net';
import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { WorkshopFault } from '../../workshop/index.js';
import { readCertified } from './certificate/certificate-folder.js';
import { keptCertificate } from './certificate/keep-certificate.js';
import { type CertificateFacts, isDueForRenewal } from './certificate/look-at-certificate.js';

export interface WantedPlace {
  /** Where to listen; this machine alone where left out. */
  readonly host?: string;
  /** Folder of the certificate; without one the server speaks plain http. */
  readonly certificateFolder?: string;
  readonly now: Date;
}

/** Where and how a server listens. */
export interface ServerOptions {
  readonly host: string;
  /** Names and addresses that it goes by. */
  readonly names: readonly string[];
  /** Whether it speaks https. */
  readonly secure: boolean;
  readonly tls?: { readonly cert: string; readonly key: string; readonly minVersion: 'TLSv1.2' };
  /** The local authority's certificate, for devices to fetch. */
  readonly authority?: string;
  /** The certificate, where it should be renewed now. */
  readonly renewSoon?: CertificateFacts;
}

/** How a server may listen: on this machine as it likes, on a network only over https. */
export async function serverOptions({
  host = LOOPBACK,
  certificateFolder,
  now,
}: WantedPlace): Promise<Result<ServerOptions, WorkshopFault>> {
  if (certificateFolder === undefined) {
    return isLoopback(host)
      ? succeed({ host, names: OWN_NAMES, secure: false })
      : fail({ code: 'access.network-without-tls', host });
  }
  const kept = await keptCertificate(certificateFolder, now);
  if (!kept.ok) return kept;
  const { server, authority } = kept.value;
  const pair = (await readCertified(certificateFolder, 'server'))!;
  return succeed({
    host,
    names: [...server.hosts.map((name) => name.toLowerCase()), ...OWN_NAMES],
    secure: true,
    tls: { cert: pair.certificate, key: pair.key, minVersion: 'TLSv1.2' },
    ...(authority ? { authority: (await readCertified(certificateFolder, 'authority'))!.certificate } : {}),
    ...(isDueForRenewal(server, now) ? { renewSoon: server } : {}),
  });
}

/** Whether only this machine can reach a server that listens there. A name other than `localhost` may lead anywhere. */
export function isLoopback(host: string): boolean {
  const family = isIP(host);
  if (family === 0) return host.toLowerCase() === 'localhost';
  return LOOPBACK_ADDRESSES.check(host, family === 4 ? 'ipv4' : 'ipv6');
}

const LOOPBACK = '127.0.0.1';
const OWN_NAMES: readonly string[] = ['localhost', LOOPBACK, '::1'];

const LOOPBACK_ADDRESSES = new BlockList();
LOOPBACK_ADDRESSES.addSubnet('127.0.0.0', 8, 'ipv4');
LOOPBACK_ADDRESSES.addAddress('::1', 'ipv6');
