/**
 * Contrast of two colours, 1 to 21: (L1 + 0.05) / (L2 + 0.05) with L the relative luminance, the lighter one on top
 * (WCAG 2.2, definitions of contrast ratio and relative luminance). Colours as `#rgb` or `#rrggbb`.
 */
export function contrast(one: string, other: string): number {
  const [lighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = channels(colour).map(linear) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function channels(colour: string): readonly number[] {
  const digits = colour.length === 4 ? colour.slice(1).replace(/./g, '$&$&') : colour.slice(1);
  return [0, 2, 4].map((at) => Number.parseInt(digits.slice(at, at + 2), 16) / 255);
}

const linear = (share: number): number =>
  share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
