import type { Alloy, Constituent, SourcedFigure, Standing } from './alloy.js';
import type { SourceKey } from './sources.js';

/**
 * What must be said of a material where a hand is about to act or a player will touch it; words are made elsewhere.
 * `nickel-trace`: the standard tolerates a little nickel, so that the wire must not be called free of it.
 */
export type MaterialCaution =
  | {
      readonly code: 'contains-nickel-release-not-tested' | 'nickel-trace-release-not-tested';
      readonly mostNickelMassShare?: number;
      readonly sources: readonly SourceKey[];
    }
  | {
      /** Winding makes little dust; sanding, grinding and polishing do. */
      readonly code: 'dust-when-abraded';
      readonly constituent: Constituent;
      /** Limit in the air of a workplace over eight hours, kg/m3, where one is on record. */
      readonly limitKgPerM3?: SourcedFigure;
    }
  | { readonly code: 'zinc-fume-when-heated'; readonly sources: readonly SourceKey[] }
  | {
      /** Ammonia, in cleaners too, cracks brass that is under stress. */
      readonly code: 'ammonia-cracks-it';
      readonly standing: Standing;
      readonly sources: readonly SourceKey[];
    };

/** Time-weighted over eight hours: 29 CFR 1910.1000, table Z-1. */
const DUST_LIMITS: Readonly<Partial<Record<Constituent, SourcedFigure>>> = {
  nickel: limit(1e-6, 'printed', 'As nickel, metal and insoluble compounds.'),
  copper: limit(1e-6, 'memory', 'Dusts and mists, as copper.'),
  zinc: limit(15e-6, 'printed', 'Zinc oxide, total dust; 5 mg/m3 respirable, and 5 as fume.'),
  tin: limit(2e-6, 'memory', 'Inorganic, as tin.'),
  silver: limit(0.01e-6, 'memory', 'As silver.'),
};

/** The cautions that go with a material: nickel on the skin, dust when it is abraded, zinc fume, ammonia. */
export function materialCautions(material: Alloy): readonly MaterialCaution[] {
  return [...nickelCautions(material), ...dustCautions(material), ...zincCautions(material)];
}

function nickelCautions({ containsNickel, nickelMassShare }: Alloy): readonly MaterialCaution[] {
  if (!containsNickel && nickelMassShare === undefined) return [];
  const code = containsNickel ? 'contains-nickel-release-not-tested' : 'nickel-trace-release-not-tested';
  const share = nickelMassShare === undefined ? {} : { mostNickelMassShare: nickelMassShare.most };
  return [{ code, ...share, sources: ['reach-entry-27', 'en-1811'] }];
}

const dustCautions = ({ constituents }: Alloy): readonly MaterialCaution[] =>
  constituents.map((constituent) => {
    const limitKgPerM3 = DUST_LIMITS[constituent];
    return {
      code: 'dust-when-abraded',
      constituent,
      ...(limitKgPerM3 === undefined ? {} : { limitKgPerM3 }),
    };
  });

const zincCautions = ({ constituents }: Alloy): readonly MaterialCaution[] =>
  constituents.includes('zinc')
    ? [
        { code: 'zinc-fume-when-heated', sources: ['29-cfr-1910-1000'] },
        { code: 'ammonia-cracks-it', standing: 'memory', sources: ['recalled'] },
      ]
    : [];

function limit(value: number, standing: Standing, note: string): SourcedFigure {
  return { value, standing, sources: ['29-cfr-1910-1000'], note };
}
