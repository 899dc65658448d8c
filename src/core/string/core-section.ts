import type { CoreWire } from './construction.js';
import { hexagonAreaM2, hexagonSecondMomentM4 } from './hexagon.js';

type Section = Pick<CoreWire, 'shape' | 'sizeM'>;

/** Area of the wire's cross-section, m²: pi d²/4 round, (sqrt 3 / 2) s² hexagonal. */
export const sectionAreaM2 = ({ shape, sizeM }: Section): number =>
  shape === 'hex' ? hexagonAreaM2(sizeM) : (Math.PI / 4) * sizeM * sizeM;

/** Second moment of area of the cross-section, m⁴: pi d⁴/64 round, (5 sqrt 3 / 144) s⁴ hexagonal. */
export const sectionSecondMomentM4 = ({ shape, sizeM }: Section): number =>
  shape === 'hex' ? hexagonSecondMomentM4(sizeM) : (Math.PI / 64) * (sizeM * sizeM) ** 2;
