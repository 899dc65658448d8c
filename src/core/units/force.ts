/** Exact: one avoirdupois pound (0.45359237 kg, agreement of 1959) under standard gravity. */
export const NEWTONS_PER_POUND_FORCE = 4.4482216152605;

/** Exact: one kilogram under standard gravity (3rd CGPM, 1901). */
export const NEWTONS_PER_KILOGRAM_FORCE = 9.80665;

/** Newtons of a force in pounds-force. */
export const newtonsFromPoundsForce = (poundsForce: number): number => poundsForce * NEWTONS_PER_POUND_FORCE;

/** Pounds-force of a force in newtons. */
export const poundsForceFromNewtons = (forceN: number): number => forceN / NEWTONS_PER_POUND_FORCE;

/** Newtons of a force in kilograms-force. */
export const newtonsFromKilogramsForce = (kilogramsForce: number): number =>
  kilogramsForce * NEWTONS_PER_KILOGRAM_FORCE;

/** Kilograms-force of a force in newtons. */
export const kilogramsForceFromNewtons = (forceN: number): number => forceN / NEWTONS_PER_KILOGRAM_FORCE;
