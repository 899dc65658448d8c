import { cutInWords, endInWords, sizeInBoth, stringKeyInWords } from '../contract/index.js';
import { formatForce, formatMillimetres } from '../core/units/index.js';
import type { EndSheet, SetUpSheet } from '../core/winding/index.js';
import { drawCautions } from './cautions-box.js';
import { TYPE } from './look.js';
import type { Pages } from './page.js';
import { type Column, drawTable } from './table.js';

interface CoresOfRun {
  readonly sheet: SetUpSheet;
  readonly ends: EndSheet;
}

/** The cores that the bench ends before they are wound, run by run, on a page of their own; nothing where there are none. */
export function drawCoresToEnd(pages: Pages, sheets: readonly SetUpSheet[]): void {
  const rows = sheets.flatMap((sheet) => (sheet.ends?.of === 'core' ? { sheet, ends: sheet.ends } : []));
  const [first] = rows;
  if (!first) return;
  pages.newPage();
  pages.heading('Cores to end at the bench', 'H1');
  pages.paragraph(
    'A core gets its end before it is wound. Make as many as the run wants, and a few more for those that are scrapped while dialling in.',
    TYPE.lead,
  );
  drawCautions(pages, { cautions: first.ends.cautions });
  drawTable(pages, COLUMNS, rows);
}

const COLUMNS: readonly Column<CoresOfRun>[] = [
  {
    heading: 'For the run of',
    share: 3,
    style: TYPE.strong,
    cell: ({ sheet }) => {
      const { short, material } = stringKeyInWords(sheet.stringKey);
      return `${short} ${material}, ${sheet.machineName}`;
    },
  },
  { heading: 'Cores', share: 1, align: 'right', cell: ({ ends }) => String(ends.quantity) },
  {
    heading: 'Wire',
    share: 3,
    cell: ({ ends }) =>
      `${ends.wireId}, ${ends.shape === 'hex' ? 'hexagon' : 'round'}, ${sizeInBoth(ends.sizeM)}`,
  },
  {
    heading: 'Cut to',
    share: 3,
    cell: ({ ends }) => `${formatMillimetres(ends.cut.lengthM, 0)} mm: ${cutInWords(ends)}`,
  },
  {
    heading: 'End and turns',
    share: 2,
    cell: ({ ends: { end, twists } }) =>
      `${endInWords(end)}, ${twists.wanted} (${twists.least} to ${twists.most})`,
  },
  {
    heading: 'Pull',
    share: 2,
    cell: ({ ends: { toPull, pull } }) =>
      pull ? `${toPull.pieces} to ${formatForce(pull.proofN, 'N')}` : `${toPull.pieces} until they break`,
  },
  { heading: 'Done', share: 1, cell: () => 'tick' },
];
