import swagger from '@fastify/swagger';
import type { FastifyInstance } from 'fastify';
import type { Permission } from '../../contract/index.js';
import { programVersion } from '../version.js';

declare module 'fastify' {
  interface FastifySchema {
    /** What the asker must be allowed; told in the API document. */
    readonly 'x-permission'?: Permission;
  }
}

/** Lets a document of the API (OpenAPI 3.1) be made from the same schemas that check what goes in and out. Called before
 * any route is made. */
export async function describedApi(api: FastifyInstance): Promise<void> {
  await api.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Tautwork',
        version: programVersion(),
        description:
          'The records of the shop. Sign in with a token: `Authorization: Bearer TOKEN`. Problems are answered as RFC 9457 tells.',
      },
      components: {
        securitySchemes: {
          token: { type: 'http', scheme: 'bearer', description: 'made by the owner, with its scopes' },
          session: {
            type: 'apiKey',
            in: 'cookie',
            name: 'tautwork-session',
            description: 'of a browser that signed in',
          },
        },
      },
      security: [{ token: [] }, { session: [] }],
    },
    convertConstToEnum: false,
    stripBasePath: false,
  });
}
