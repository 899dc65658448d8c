/*
 * A regular hexagon by its distance across flats s, the size that core wire is sold and gauged by.
 * All four are exact geometry.
 */

/** Area of a regular hexagon: (sqrt 3 / 2) s². */
export const hexagonAreaM2 = (acrossFlatsM: number): number =>
  (Math.sqrt(3) / 2) * acrossFlatsM * acrossFlatsM;

/** Distance across corners: 2 s / sqrt 3. */
export const acrossCornersM = (acrossFlatsM: number): number => (2 / Math.sqrt(3)) * acrossFlatsM;

/**
 * Second moment of area in m⁴: (5 sqrt 3 / 144) s⁴ about EVERY axis through the centre, so that a true
 * hexagon does not split a string's two planes of vibration.
 */
export const hexagonSecondMomentM4 = (acrossFlatsM: number): number =>
  ((5 * Math.sqrt(3)) / 144) * (acrossFlatsM * acrossFlatsM) ** 2;

/** Perimeter: 2 sqrt 3 s. */
export const hexagonPerimeterM = (acrossFlatsM: number): number => 2 * Math.sqrt(3) * acrossFlatsM;
