import type { ReactNode } from 'react';
import type { BodyOf } from '../../../contract/index.js';
import { STRENGTH_TABLES } from '../../../core/materials/index.js';
import type { Estimate } from '../../../core/numeric/index.js';
import { nearestPitch, pitchName } from '../../../core/units/index.js';
import { Explained, type Explanation } from '../../parts/explained.js';
import type { Fact } from '../../parts/facts.js';
import type { Figures } from '../../sight/figures.js';
import type { RECIPES_WORDS } from '../../words/recipes.js';
import type { Prediction } from './prediction.js';

interface FactsParts {
  readonly recipe: BodyOf<'recipe'>;
  readonly words: (typeof RECIPES_WORDS)['en'];
  readonly figures: Figures;
  readonly wireName: (id: string) => string;
  readonly noteName: string;
  /** The shop's own limit of stress, share of strength. */
  readonly stressLimit: number | undefined;
}

type Inputs = NonNullable<Explanation['inputs']>;

/** The prediction as figures, each with its doubt and with how it is known. */
export function predictionFacts(prediction: Prediction, parts: FactsParts): readonly Fact[] {
  const { words, figures, stressLimit } = parts;
  const { estimates, body } = prediction;
  const { explain, figures: names } = words;
  const given = inputsOf(prediction, parts);
  const seatSource = prediction.seat.state === 'predicted' ? words.sourcePrior : words.sourceSeat;
  const fact = (name: string, value: ReactNode, doubt: string | undefined, how: Explanation): Fact => ({
    name,
    value: (
      <Explained name={name} {...how}>
        {value}
      </Explained>
    ),
    ...(doubt === undefined ? {} : { under: `± ${doubt}` }),
  });
  const estimated = (
    name: string,
    { value, u }: Estimate,
    inFigures: (value: number) => string,
    how: Explanation,
  ) => fact(name, inFigures(value), inFigures(2 * u), how);
  const share = (value: number) => `${figures.number(value * 100, 1)} %`;
  const strengthSource = words.sourceStrength(strengthTableOf(parts.recipe));
  const { stressShare } = estimates;
  const isStrained =
    stressShare !== undefined && stressLimit !== undefined && stressShare.value > stressLimit;
  return [
    estimated(names.unitWeight, estimates.linearDensityKgPerM, figures.unitWeight, {
      what: explain.unitWeight,
      formula: explain.unitWeightFormula,
      inputs: [...given.wires, ...given.massSeat],
      source: seatSource,
    }),
    estimated(names.outside, estimates.meanDiameterM, figures.diameter, {
      what: explain.outside,
      formula: explain.outsideFormula,
      inputs: [...given.wires, ...given.massSeat],
      source: seatSource,
    }),
    estimated(names.largest, estimates.caliperDiameterM, figures.diameter, {
      what: explain.largest,
      formula: explain.largestFormula,
      inputs: [...given.wires, ...given.caliperSeat],
      source: seatSource,
    }),
    estimated(names.pull, estimates.tensionN, figures.pull, {
      what: explain.pull,
      formula: explain.pullFormula,
      inputs: [...given.sounding, ...given.unitWeight],
      source: words.sourceMersenne,
    }),
    stressShare === undefined
      ? { name: names.strength, value: words.unknown, under: words.unknownStrength, care: true }
      : {
          ...estimated(names.strength, stressShare, share, {
            what: explain.strength,
            formula: explain.strengthFormula,
            inputs: [...given.pull, ...given.strength],
            source: strengthSource,
          }),
          ...(isStrained
            ? {
                care: true,
                under: `± ${share(2 * stressShare.u)}; ${words.careStrength(share(stressLimit))}`,
              }
            : {}),
        },
    estimated(names.stress, estimates.stressPa, figures.stress, {
      what: explain.stress,
      formula: explain.stressFormula,
      inputs: [...given.pull, ...given.wires.slice(0, 1)],
      source: words.sourceMersenne,
    }),
    estimated(
      names.inharmonicity,
      estimates.inharmonicityB,
      (value) => `${figures.number(value * 1e6, 0)} · 10⁻⁶`,
      {
        what: explain.inharmonicity,
        formula: explain.inharmonicityFormula,
        inputs: [...given.pull, ...given.sounding, ...given.stiffness],
        source: seatSource,
      },
    ),
    fact(names.coreRatio, figures.number(body.coreRatio, 3), undefined, {
      what: explain.coreRatio,
      formula: explain.coreRatioFormula,
      inputs: [
        ...given.wires.slice(0, 1),
        { name: names.outside, value: figures.diameter(body.meanDiameterM) },
      ],
      source: seatSource,
    }),
    ...(prediction.breakingHz === undefined
      ? []
      : [
          fact(names.breaking, noteOf(prediction.breakingHz), undefined, {
            what: explain.breaking,
            formula: explain.breakingFormula,
            inputs: [...given.sounding.slice(0, 1), ...given.unitWeight, ...given.strength],
            source: strengthSource,
          }),
        ]),
  ];
}

function inputsOf({ body, seat, sounding, estimates }: Prediction, parts: FactsParts) {
  const {
    recipe,
    figures,
    wireName,
    noteName,
    words: { inputs },
  } = parts;
  const { construction, coreWireId, wrapWireIds } = recipe;
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const layers = construction.kind === 'plain' ? [] : construction.layers;
  const isHexWound = core.shape === 'hex' && layers.length > 0;
  const flattening =
    layers.length === 0 ? [] : [{ name: inputs.flattening, value: doubtful(seat.flattening, figures, 3) }];
  const wires: Inputs = [
    { name: inputs.core, value: `${wireName(coreWireId)}, ${figures.diameter(core.sizeM)}` },
    ...layers.map(({ wireDiameterM }, at) => ({
      name: `${inputs.wrap} ${at + 1}`,
      value: `${wireName(wrapWireIds[at] ?? '')}, ${figures.diameter(wireDiameterM)}`,
    })),
  ];
  const seatOf = (name: string, part: Estimate): Inputs => [
    ...(isHexWound ? [{ name, value: doubtful(part, figures, 4) }] : []),
    ...flattening,
  ];
  return {
    wires,
    massSeat: seatOf(inputs.massSeat, seat.massSeat),
    caliperSeat: seatOf(inputs.caliperSeat, seat.caliperSeat),
    sounding: [
      { name: inputs.scale, value: figures.length(sounding.speakingLengthM) },
      { name: inputs.note, value: `${noteName}, ${figures.number(sounding.frequencyHz, 2)} Hz` },
    ],
    unitWeight: [{ name: inputs.unitWeight, value: figures.unitWeight(body.linearDensityKgPerM) }],
    pull: [{ name: inputs.pull, value: figures.pull(estimates.tensionN.value) }],
    stiffness: [
      { name: inputs.stiffness, value: `${figures.number(body.bendingStiffnessNM2 * 1e6, 1)} N mm²` },
    ],
    strength:
      body.minimumStrengthPa === undefined
        ? []
        : [{ name: inputs.strength, value: figures.stress(body.minimumStrengthPa) }],
  };
}

const doubtful = ({ value, u }: Estimate, figures: Figures, decimals: number): string =>
  `${figures.number(value, decimals)} ± ${figures.number(2 * u, decimals)}`;

const noteOf = (soundHz: number): string => pitchName({ ...nearestPitch(soundHz), cents: 0 });

const strengthTableOf = ({ construction }: BodyOf<'recipe'>): string => {
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  return STRENGTH_TABLES[core.strengthTable].designation;
};
