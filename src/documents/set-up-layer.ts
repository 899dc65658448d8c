import {
  leanedOnInWords,
  lengthInBoth,
  metres,
  setPointInWords,
  sizeInBoth,
  speedInBoth,
  speedLimitInWords,
  weight,
} from '../contract/index.js';
import { degreesFromRadians, formatDecimal, formatFraction, formatTrimmed } from '../core/units/index.js';
import type { LayerSetUp, SetUpSheet } from '../core/winding/index.js';
import { GAP, INK, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** One layer of wrap: the three figures that are set or counted, huge; the rest beside and under them. */
export function drawLayer(pages: Pages, sheet: SetUpSheet, index: number): void {
  const layer = sheet.layers[index]!;
  const { pen } = pages;
  pages.makeRoom(LEAST_HEIGHT);
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.heavy, INK.text),
  );
  pages.y += GAP.small;
  pen.tag('H2', () => pen.line(headingOf(layer, sheet.layers.length, index), pages.here(), TYPE.heading));
  pages.y += lineHeight(TYPE.heading);
  const bottoms = hugeFigures(layer).map((figure, column) => drawHuge(pages, figure, column));
  const factsBottom = drawFacts(pages, factsOf(layer));
  pages.y = Math.max(...bottoms, factsBottom) + GAP.small;
  pen.tag('P', () => {
    pages.y += pen.lines(`Wrap tension: ${tensionOf(layer)}`, pages.here(), TYPE.body);
  });
  pages.y += GAP.close;
}

const tensionOf = ({ wrapTension }: LayerSetUp): string =>
  `${setPointInWords(wrapTension)} ${leanedOnInWords(wrapTension, 1)}`.trim();

function headingOf(layer: LayerSetUp, count: number, index: number): string {
  const place = count === 1 ? 'Wrap' : `Wrap layer ${index + 1} of ${count}`;
  return `${place} · wire ${layer.wireId} · ${sizeInBoth(layer.wireDiameterM)}`;
}

interface HugeFigure {
  readonly label: string;
  readonly figure: string;
  readonly under: string;
}

const hugeFigures = (layer: LayerSetUp): HugeFigure[] => [
  driveFigure(layer),
  {
    label: 'Spindle, rpm',
    figure: String(Math.round(layer.spindleRpm)),
    under: `limit: ${speedLimitInWords(layer.rpmLimitedBy)}`,
  },
  {
    label: 'Turns',
    figure: String(Math.round(layer.turns)),
    under: `lead angle ${formatDecimal(degreesFromRadians(layer.leadAngleRad), 2)}°`,
  },
];

function driveFigure({ drive }: LayerSetUp): HugeFigure {
  if (drive.kind === 'servo') {
    const figure = formatTrimmed(drive.pitchM * 1000, 4);
    return { label: 'Pitch to type in, mm', figure, under: `= ${sizeInBoth(drive.pitchM)}` };
  }
  const under = `gives ${sizeInBoth(drive.pitchM)}`;
  return { label: 'Dial', figure: formatTrimmed(drive.dial, 3), under };
}

function drawHuge(pages: Pages, { label, figure, under }: HugeFigure, column: number): number {
  const { pen } = pages;
  const [from, share] = HUGE_PLACES[column]!;
  const at = { x: pages.left + from * pages.width, y: pages.y, width: share * pages.width - GAP.part };
  let height = 0;
  pen.tag('P', () => {
    pen.line(label, at, TYPE.small);
    pen.figure(figure, { ...at, y: at.y + lineHeight(TYPE.small) - HUGE_RISE }, TYPE.huge);
    const y = at.y + lineHeight(TYPE.small) + lineHeight(TYPE.huge) - 2 * HUGE_RISE;
    height = y + pen.lines(under, { ...at, y }, TYPE.body, { mostLines: 2 });
  });
  return height;
}

const factsOf = (layer: LayerSetUp): [string, string][] => [
  ['Traverse', speedInBoth(layer.traverseMPerS)],
  ['Wound length', lengthInBoth(layer.woundLengthM)],
  ['Wire a string', `${metres(layer.wirePerStringM)}, ${weight(layer.wirePerStringKg)}`],
  ['Winding', `${Math.round(layer.windSeconds)} s`],
  ...gapOf(layer.drive),
];

/** A gear machine's dial rarely hits the pitch that was wanted: by how much turns stand apart. */
const gapOf = (drive: LayerSetUp['drive']): [string, string][] =>
  drive.kind === 'gear' ? [['Gap', `${formatFraction(drive.gap, 1)} over touching turns`]] : [];

function drawFacts(pages: Pages, facts: readonly [string, string][]): number {
  const { pen } = pages;
  const x = pages.left + pages.width * HUGE_SHARE;
  const width = pages.width * (1 - HUGE_SHARE);
  facts.forEach(([name, value], row) => {
    const y = pages.y + row * lineHeight(TYPE.body);
    pen.tag('P', () => {
      pen.line(name, { x, y, width: width * NAME_SHARE - GAP.small }, TYPE.quiet);
      pen.line(value, { x: x + width * NAME_SHARE, y, width: width * (1 - NAME_SHARE) }, TYPE.strong);
    });
  });
  return pages.y + facts.length * lineHeight(TYPE.body);
}

/** Where each huge figure begins and how wide it may be, as shares of the page; the pitch has most digits. */
const HUGE_PLACES: readonly (readonly [from: number, share: number])[] = [
  [0, 0.25],
  [0.25, 0.19],
  [0.44, 0.19],
];
const HUGE_SHARE = 0.63;
const NAME_SHARE = 0.34;
/** Figures have no descenders: their line box may overlap the gaps above and below. */
const HUGE_RISE = 3;
const LEAST_HEIGHT = 110;
