import type { SourcedFigure } from './alloy.js';
import type { SourceKey } from './sources.js';

interface Doubt {
  readonly u?: number;
  readonly note?: string;
}

/** A figure that stands on the page named. */
export const printed = (value: number, sources: readonly SourceKey[], doubt: Doubt = {}): SourcedFigure => ({
  value,
  standing: 'printed',
  sources,
  ...doubt,
});

/** A figure worked out from those of the sources named. */
export const derived = (value: number, sources: readonly SourceKey[], doubt: Doubt = {}): SourcedFigure => ({
  value,
  standing: 'derived',
  sources,
  ...doubt,
});

/** A figure that no page has confirmed: the workshop should overwrite it. */
export const recalled = (value: number, doubt: Doubt = {}): SourcedFigure => ({
  value,
  standing: 'memory',
  sources: ['recalled'],
  ...doubt,
});

/**
 * Standard uncertainty of a figure of which only the ends of a range are known, every value between them
 * being as likely: u = (high - low) / sqrt(12). Source: JCGM 100:2008, 4.3.7.
 */
export const spread = (low: number, high: number): number => (high - low) / Math.sqrt(12);
