import type { FastifyInstance } from 'fastify';

const PATH = '/authority.crt';

/** Where on the server a device fetches the local authority's certificate: what the QR code says. */
export const AUTHORITY_ADDRESS = `/api/v1${PATH}`;

/** Gives the certificate that devices install. It is no secret; the fingerprint that the console shows tells whether it is
 * the right one. */
export function authorityRoute(api: FastifyInstance, certificate: string): void {
  api.get(PATH, { config: { open: true } }, (_request, reply) => {
    reply.header('content-disposition', 'attachment; filename="tautwork-authority.crt"');
    return reply.type('application/x-x509-ca-cert').send(certificate);
  });
}
