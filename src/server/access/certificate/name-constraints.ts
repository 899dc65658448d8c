import { X509Certificate } from 'node:crypto';
import { BlockList, isIP } from 'node:net';

/** Names that only ever mean something on a private network (RFC 6761, RFC 6762, RFC 8375; `internal` is set aside for
 * private use; `lan` is common practice, no source). */
const PRIVATE_NAMES = ['local', 'home.arpa', 'internal', 'lan', 'localhost'];

/** Addresses that only ever mean something on a private network (RFC 1918, RFC 3927, RFC 4193, RFC 4291, loopback). */
const PRIVATE_NETWORKS: readonly { readonly octets: readonly number[]; readonly bits: number }[] = [
  { octets: [10, 0, 0, 0], bits: 8 },
  { octets: [172, 16, 0, 0], bits: 12 },
  { octets: [192, 168, 0, 0], bits: 16 },
  { octets: [169, 254, 0, 0], bits: 16 },
  { octets: [127, 0, 0, 0], bits: 8 },
  { octets: [0xfc, ...zeros(15)], bits: 7 },
  { octets: [0xfe, 0x80, ...zeros(14)], bits: 10 },
  { octets: [...zeros(15), 1], bits: 128 },
];

/** Its object identifier. */
export const NAME_CONSTRAINTS = '2.5.29.30';

/**
 * What a certificate authority may vouch for, in DER (RFC 5280, 4.2.1.10): names and addresses of private networks, and the
 * names given. Whoever steals its key can still not pose as a site of the world outside.
 */
export function permittedNames(names: readonly string[]): Uint8Array<ArrayBuffer> {
  const permitted = [
    ...[...new Set([...PRIVATE_NAMES, ...names])].map(dnsName),
    ...PRIVATE_NETWORKS.map(({ octets, bits }) =>
      element(IP_ADDRESS, [...octets, ...mask(bits, octets.length)]),
    ),
  ];
  const subtrees = permitted.map((base) => element(SEQUENCE, base));
  return Uint8Array.from(element(SEQUENCE, element(PERMITTED_SUBTREES, subtrees.flat())));
}

/** Whether a name is of no private network, so that the authority must be made for it. */
export const isPublicName = (host: string): boolean =>
  isIP(host) === 0 && !PRIVATE_NAMES.some((suffix) => host === suffix || host.endsWith(`.${suffix}`));

/** Whether an address is of no private network: for such, the authority never vouches. */
export const isPublicAddress = (host: string): boolean => {
  const family = isIP(host);
  return family !== 0 && !PRIVATE_ADDRESSES.check(host, family === 4 ? 'ipv4' : 'ipv6');
};

/** Whether an authority was made for a name, or for a name that it is below. */
export function vouchesFor(authority: string, host: string): boolean {
  const { raw } = new X509Certificate(authority);
  const labels = host.split('.');
  const names = labels.map((_, at) => labels.slice(at).join('.'));
  return names.some((name) => raw.includes(Buffer.from(element(SEQUENCE, dnsName(name)))));
}

const SEQUENCE = 0x30;
const PERMITTED_SUBTREES = 0xa0;
const DNS_NAME = 0x82;
const IP_ADDRESS = 0x87;

const PRIVATE_ADDRESSES = new BlockList();
for (const { octets, bits } of PRIVATE_NETWORKS) {
  if (octets.length === 4) PRIVATE_ADDRESSES.addSubnet(octets.join('.'), bits, 'ipv4');
  else PRIVATE_ADDRESSES.addSubnet(ipv6Text(octets), bits, 'ipv6');
}

const dnsName = (name: string): readonly number[] => element(DNS_NAME, new TextEncoder().encode(name));

/** Tag, length and content: DER, as far as it is needed here. */
function element(tag: number, content: Iterable<number>): readonly number[] {
  const octets = [...content];
  const { length } = octets;
  if (length < 0x80) return [tag, length, ...octets];
  return length < 0x100 ? [tag, 0x81, length, ...octets] : [tag, 0x82, length >> 8, length & 0xff, ...octets];
}

function mask(bits: number, octets: number): readonly number[] {
  return Array.from(
    { length: octets },
    (_, at) => 0xff & (0xff00 >> Math.min(8, Math.max(0, bits - 8 * at))),
  );
}

function ipv6Text(octets: readonly number[]): string {
  const groups = Array.from({ length: 8 }, (_, at) =>
    ((octets[2 * at]! << 8) | octets[2 * at + 1]!).toString(16),
  );
  return groups.join(':');
}

function zeros(count: number): readonly number[] {
  return new Array<number>(count).fill(0);
}
