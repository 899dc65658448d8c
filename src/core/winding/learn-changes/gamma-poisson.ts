import { gammaDistribution } from '../../stats/index.js';

/** A gamma distribution of a rate: mean shape / rate. */
export interface Gamma {
  readonly shape: number;
  readonly rate: number;
}

/**
 * What a prior becomes by counts that are Poisson with mean exposure x rate: Gamma(shape + counted, rate + exposure). Gelman et
 * al., Bayesian Data Analysis (3rd ed. 2013), 2.6.
 */
export const afterCounts = (
  { shape, rate }: Gamma,
  { counted, exposure }: { readonly counted: number; readonly exposure: number },
): Gamma => ({ shape: shape + counted, rate: rate + exposure });

export const gammaMean = ({ shape, rate }: Gamma): number => shape / rate;

/** The middle nine tenths. */
export const gammaBand = ({ shape, rate }: Gamma): { readonly low: number; readonly high: number } => ({
  low: gammaDistribution(shape).quantile(0.05) / rate,
  high: gammaDistribution(shape).quantile(0.95) / rate,
});
