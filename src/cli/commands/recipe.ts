import type { Command } from 'commander';
import { countInWords, materialInWords, meritInWords, recipeFaultWords } from '../../contract/index.js';
import type { Shop } from '../../core/day/index.js';
import { type RecipeChoice, type RecipeSearch, recipesForGauge } from '../../core/recipes/index.js';
import {
  formatDecimal,
  formatFraction,
  formatGauge,
  formatMoney,
  formatThou,
  formatUnitWeight,
  metresFromThou,
} from '../../core/units/index.js';
import { EXIT } from '../exit-codes.js';
import { shopOf } from '../inputs.js';
import { gaugeOption, materialOption, numberOption, wholeOption } from '../options.js';
import { textTable } from '../table.js';
import type { Terminal } from '../terminal.js';

interface RecipeOptions {
  readonly gauge: string;
  readonly material: string;
  readonly tolerance: string;
  readonly layers?: string;
  readonly shop?: string;
  readonly json?: boolean;
}

/** `tautwork recipe`: the ways worth choosing from to make one gauge from the shop's wire. */
export function recipeCommand(program: Command, terminal: Terminal): void {
  program
    .command('recipe')
    .summary('list the ways to make one gauge')
    .description(
      "Pairs every core with every wrap of the shop and lists the builds that meet the gauge and that no other beats in everything: stiffness, strength, inharmonicity, core ratio and wire cost. All figures are predicted, not measured, until the shop's own strings have been.",
    )
    .requiredOption('--gauge <gauge>', 'finished gauge: 26, .026 or 0.66 mm')
    .requiredOption('--material <material>', 'such as "nickel-plated steel" or "phosphor bronze"')
    .option('--tolerance <thou>', 'how far the diameter may stand off, thousandths of an inch', '0.5')
    .option('--layers <count>', 'most layers of wrap, 1 or 2')
    .option('--shop <file>', 'the shop, JSON; the invented demo workshop where left out')
    .option('--json', 'print as JSON')
    .action(async (options: RecipeOptions) => {
      process.exitCode = runRecipe(await shopOf(options.shop), options, terminal);
    });
}

function runRecipe(shop: Shop, options: RecipeOptions, terminal: Terminal): number {
  const gaugeThou = gaugeOption('--gauge', options.gauge);
  const material = materialOption('--material', options.material);
  const choices = recipesForGauge({
    gaugeThou,
    material,
    toleranceM: metresFromThou(numberOption('--tolerance', options.tolerance, { least: 0, most: 10 })),
    ...offeredWire(shop),
    ...(options.layers === undefined
      ? {}
      : { maxLayers: wholeOption('--layers', options.layers, { least: 1, most: 2 }) === 2 ? 2 : 1 }),
    ...(shop.seat ? { seat: shop.seat } : {}),
  });
  if (!choices.ok) {
    const { what, mend } = recipeFaultWords(choices.fault);
    terminal.remark(`${what} ${mend}`);
    return EXIT.impossible;
  }
  if (options.json) {
    terminal.print(JSON.stringify(choices.value));
    return EXIT.done;
  }
  const { front, considered, withinTolerance } = choices.value;
  terminal.print(
    [
      `${formatGauge(gaugeThou)} in ${materialInWords(material)}: ${countInWords(considered, 'build')} considered; meeting the gauge: ${withinTolerance}; worth choosing from: ${front.length}.`,
      choiceTable(front, shop),
      'Predicted by geometry and published figures, at a pull of 75 N on 648 mm. Mean: what a micrometer reads averaged over a rotation; most: its largest reading.',
    ].join('\n\n'),
  );
  return EXIT.done;
}

const choiceTable = (front: readonly RecipeChoice[], shop: Shop): string =>
  textTable(front, [
    { heading: 'core', cell: ({ coreWireId }) => coreWireId },
    { heading: 'wrap', cell: ({ wrapWireIds }) => wrapWireIds.join(' + ') },
    { heading: 'mean thou', cell: ({ meanDiameterM }) => formatThou(meanDiameterM), align: 'right' },
    { heading: 'most', cell: ({ caliperDiameterM }) => formatThou(caliperDiameterM), align: 'right' },
    {
      heading: 'unit weight',
      cell: ({ figures }) => formatUnitWeight(figures.linearDensityKgPerM),
      align: 'right',
    },
    { heading: 'core ratio', cell: ({ figures }) => formatDecimal(figures.coreRatio, 3), align: 'right' },
    {
      heading: 'stress',
      cell: ({ figures }) =>
        figures.stressShare === undefined ? 'unknown' : formatFraction(figures.stressShare),
      align: 'right',
    },
    {
      heading: 'inharmonicity B',
      cell: ({ figures }) => figures.inharmonicityB.toExponential(2),
      align: 'right',
    },
    {
      heading: 'wire a metre',
      cell: ({ figures }) =>
        figures.wireCostMinorPerM === undefined
          ? ''
          : formatMoney(Math.round(figures.wireCostMinorPerM), shop.rates),
      align: 'right',
    },
    { heading: 'best at', cell: ({ bestAt }) => bestAt.map(meritInWords).join(', ') },
  ]);

const offeredWire = (shop: Shop): Pick<RecipeSearch, 'cores' | 'wraps'> => ({
  cores: shop.wires.flatMap(({ id, use, shape, sizeM, alloy, strengthTable, priceMinorPerKg }) =>
    use === 'core' && strengthTable
      ? [{ wireId: id, shape, sizeM, alloy, strengthTable, priceMinorPerKg }]
      : [],
  ),
  wraps: shop.wires.flatMap(({ id, use, sizeM, alloy, priceMinorPerKg }) =>
    use === 'wrap' ? [{ wireId: id, wireDiameterM: sizeM, alloy, priceMinorPerKg }] : [],
  ),
});
