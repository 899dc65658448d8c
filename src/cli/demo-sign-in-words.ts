import { DEMO_PASSWORD, DEMO_PEOPLE } from '../workshop/index.js';

/** How one comes into the invented shop, in a line. */
export const demoSignInWords = (): string =>
  `Sign in as ${DEMO_PEOPLE.owner.name} with the password “${DEMO_PASSWORD}”; who else one can be is told in docs/handbook/demo.md.`;
