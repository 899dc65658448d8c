import type { Estimate } from '../core/numeric/index.js';
import { formatDecimal, formatMillimetres, formatThou, formatUnitWeight } from '../core/units/index.js';
import type { SetUpSheet } from '../core/winding/index.js';
import { GAP, INK, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** What the finished string should measure, with the band in which 95 of 100 predictions should come true. */
export function drawExpected(pages: Pages, sheet: SetUpSheet): void {
  const { pen } = pages;
  pages.makeRoom(LEAST_HEIGHT);
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.heavy, INK.text),
  );
  pages.y += GAP.small;
  pen.tag('H2', () =>
    pen.line('Expect (the band is two standard uncertainties)', pages.here(), TYPE.heading),
  );
  pages.y += lineHeight(TYPE.heading);
  const full = pages.width / 3;
  expectedOf(sheet).forEach(([label, figure, band], column) => {
    const at = { x: pages.left + column * full, y: pages.y, width: full - GAP.part };
    pen.tag('P', () => {
      pen.line(label, at, TYPE.small);
      pen.figure(figure, { ...at, y: at.y + lineHeight(TYPE.small) }, TYPE.title);
      pen.line(band, { ...at, y: at.y + lineHeight(TYPE.small) + lineHeight(TYPE.title) }, TYPE.body);
    });
  });
  pages.y += lineHeight(TYPE.small) + lineHeight(TYPE.title) + lineHeight(TYPE.body) + GAP.close;
}

const expectedOf = (sheet: SetUpSheet): [label: string, figure: string, band: string][] => [
  ['Outside, mean over one turn', ...diameter(sheet.meanDiameterM)],
  ['Outside, largest reading', ...diameter(sheet.caliperDiameterM)],
  ['Unit weight', ...unitWeight(sheet.unitWeightKgPerM)],
];

function diameter({ value, u }: Estimate): [string, string] {
  const low = value - COVERAGE * u;
  const high = value + COVERAGE * u;
  const digits = value < THIN_M ? 2 : 1;
  return [
    `Ø ${formatThou(value, digits)} ± ${formatThou(COVERAGE * u, digits)} thou`,
    `${formatMillimetres(value)} mm, from ${formatMillimetres(low)} to ${formatMillimetres(high)} mm`,
  ];
}

function unitWeight({ value, u }: Estimate): [string, string] {
  const share = (COVERAGE * u) / value;
  return [formatUnitWeight(value), `± ${formatDecimal(share * 100, 1)} %`];
}

/** Twice the standard uncertainty covers about 95 % (GUM, JCGM 100:2008, 6.3.3). */
const COVERAGE = 2;
/** Below this a tenth of a thou is too coarse to see the band. */
const THIN_M = 0.0007;
const LEAST_HEIGHT = 60;
