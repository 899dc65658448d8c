/** What bending stiffness does to a string depends on these three alone. */
export interface StiffString {
  readonly bendingStiffnessNM2: number;
  readonly tensionN: number;
  readonly speakingLengthM: number;
}

/**
 * b = sqrt(EI/T) / L, pure number (Beausoleil 2024, App. B): the length over which a clamped end holds the
 * string straight, as a share of L.
 */
export const bendingParameter = ({ bendingStiffnessNM2, tensionN, speakingLengthM }: StiffString): number =>
  Math.sqrt(bendingStiffnessNM2 / tensionN) / speakingLengthM;

/**
 * Inharmonicity B = pi² EI / (T L²) of f_n = n f0 sqrt(1 + B n²) (Fletcher 1964). B = pi² b²; another "B" in
 * print differs by that factor.
 */
export const inharmonicityOf = (string: StiffString): number => (Math.PI * bendingParameter(string)) ** 2;
