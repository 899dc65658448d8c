/** So many numbers spread over a dial tell its curve; more cost time. Our own choice. */
const USUAL_NUMBERS = 8;

/** Numbers of a dial to be measured, spread over it and rounded to its steps: both ends, and as many between as wished. */
export function dialsToRead(dial: {
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly numbers?: number;
}): readonly number[] {
  const { least, most, step, numbers = USUAL_NUMBERS } = dial;
  const steps = Math.max(1, Math.floor((most - least) / step + ROUNDING));
  const parts = Math.max(1, Math.min(numbers - 1, steps));
  const at = Array.from({ length: parts + 1 }, (_, part) => Math.round((part * steps) / parts));
  return [...new Set(at)].map((whole) => Number((least + whole * step).toPrecision(12)));
}

const ROUNDING = 1e-9;
