export { type Estimate, estimate } from './estimate.js';
