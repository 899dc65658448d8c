import type { FastifyInstance, FastifyRequest } from 'fastify';
import { ACCESS_SCHEMAS, enrolDevice } from '../../contract/index.js';
import { deviceOfKey, enrolDeviceCase, peopleWithPin, perform } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { orProblem } from './access-problem.js';
import type { AccessRouteParts } from './access-route-parts.js';
import { accessRoute } from './access-routes.js';
import { cookieOf } from './cookies.js';
import { inSession, meOf } from './own-routes.js';

/** The device that asks: is it enrolled, and enrol it. */
export function deviceRoutes(api: FastifyInstance, parts: AccessRouteParts): void {
  accessRoute(api, {
    method: 'GET',
    path: '/this-device',
    name: 'this-device',
    summary: 'What the enrolled device that asks is called, and who can sign in on it with a PIN.',
    whom: 'anyone',
    answer: ACCESS_SCHEMAS.thisDevice,
    handler: async ({ request }) => {
      const device = await deviceHere(parts, request);
      if (!device) throw workshopProblem({ code: 'access.device-not-enrolled' });
      return device;
    },
  });
  accessRoute(api, {
    method: 'GET',
    path: '/who',
    name: 'who',
    summary:
      'Who asks, where anyone is signed in, and from which device, where it is enrolled: what a page asks first.',
    whom: 'anyone',
    answer: ACCESS_SCHEMAS.who,
    handler: async ({ request }) => {
      const known = parts.known(request);
      const device = await deviceHere(parts, request);
      return { ...(known ? { me: meOf(known) } : {}), ...(device ? { device } : {}) };
    },
  });
  accessRoute(api, {
    method: 'POST',
    path: enrolDevice.path,
    name: enrolDevice.name,
    summary: enrolDevice.summary,
    whom: enrolDevice.permission,
    body: enrolDevice.input,
    answer: ACCESS_SCHEMAS.enrolled,
    handler: async ({ request, reply, body }) => {
      const { actor } = inSession(parts, request);
      const { store, clock, newId } = parts;
      const { device, secret } = orProblem(
        await perform(store, enrolDeviceCase, { actor, clock, newId, input: body }),
      );
      parts.cookies.set(reply, 'tautwork-device', secret);
      return { device };
    },
  });
}

/** Undefined where the browser that asks is none of the shop's devices. */
const deviceHere = ({ store }: AccessRouteParts, request: FastifyRequest) =>
  store.read(async (tx) => {
    const device = await deviceOfKey(tx, cookieOf(request, 'tautwork-device'));
    if (!device) return undefined;
    const people = (await peopleWithPin(tx)).map(({ id, body }) => ({ id, name: body.name }));
    return { device: { id: device.id, name: device.name }, people };
  });
