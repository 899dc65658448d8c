/**
 * Stress and stretch of a wire that is pulled: sigma = T/A, strain = sigma/E. Pa and a share of length. The
 * straight line holds below yield, which wrap wire passes anyway where it bends round the core.
 */
export function pulledWire(wire: {
  readonly pullN: number;
  readonly areaM2: number;
  readonly youngsModulusPa: number;
}): { readonly stressPa: number; readonly strain: number } {
  const stressPa = wire.pullN / wire.areaM2;
  return { stressPa, strain: stressPa / wire.youngsModulusPa };
}
