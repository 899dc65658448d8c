import type { Figures } from '../../sight/figures.js';
import type { STRINGS_WORDS } from '../../words/machine.js';
import type { InstrumentUnit } from './read-instrument.js';

const OF_ONE: Readonly<Record<InstrumentUnit, { readonly si: number; readonly decimals: number }>> = {
  in: { si: 0.0254, decimals: 4 },
  thou: { si: 0.0000254, decimals: 1 },
  mm: { si: 0.001, decimals: 3 },
  g: { si: 0.001, decimals: 2 },
  kg: { si: 1, decimals: 4 },
};

/** A figure as the instrument at hand shows it, so that eyes need not convert. */
export function instrumentFigure(
  value: number,
  unit: InstrumentUnit,
  { figures, words }: { readonly figures: Figures; readonly words: (typeof STRINGS_WORDS)['en'] },
): string {
  const { si, decimals } = OF_ONE[unit];
  return words.byUnit[unit](figures.number(value / si, decimals));
}
