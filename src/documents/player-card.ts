import { type BodyOf, type CardString, cardGauge, forceInWords, playerCard } from '../contract/index.js';
import type { CalendarDate } from '../core/foundation/index.js';
import { TYPE } from './look.js';
import { Pages } from './page.js';
import { type PaperAbout, printPaper } from './paper.js';
import { drawCardStrings } from './player-card-strings.js';
import { type Column, drawTable } from './table.js';

export interface CardToPrint {
  readonly shop: PaperAbout['day']['shop'];
  /** Day of the answer. */
  readonly date: CalendarDate;
  readonly request: BodyOf<'request'>;
}

/**
 * The card that goes back to a player: the set as strings to length with their pulls, each string's figures and how it will
 * feel, what the neck bears, and what to mind. Undefined where the request has no answer yet.
 */
export function playerCardPdf({ shop, date, request }: CardToPrint): Promise<Uint8Array> | undefined {
  const card = playerCard(request);
  if (!card) return undefined;
  const about: PaperAbout = { title: `Strings for ${card.player}`, day: { shop, date } };
  return printPaper(about, (pen) => {
    const pages = new Pages(pen, about);
    pages.newPage();
    pages.heading(about.title, 'H1');
    pages.paragraph(card.gauges, TYPE.large);
    pages.paragraph(card.about, TYPE.lead);
    drawCardStrings(pages, card.strings);
    pages.heading('What you will feel');
    drawTable(pages, columnsFor(card.strings), card.strings);
    pages.heading('Your neck');
    for (const sentence of card.neck) pages.paragraph(sentence, TYPE.lead);
    pages.heading('When you put them on');
    for (const sentence of card.mind) pages.paragraph(sentence, TYPE.lead);
    pages.paragraph(card.known, TYPE.small);
    pages.finish();
  });
}

/** What is liked now has its columns only where it was told. */
const columnsFor = (strings: readonly CardString[]): readonly Column<CardString>[] =>
  strings.some(({ likedTensionN }) => likedTensionN !== undefined) ? [...COLUMNS, ...LIKED] : COLUMNS;

const COLUMNS: readonly Column<CardString>[] = [
  { heading: 'String', share: 8, style: TYPE.strong, cell: ({ position }) => String(position) },
  { heading: 'Note', share: 8, cell: ({ note }) => note },
  { heading: 'Gauge', share: 12, style: TYPE.strong, cell: ({ spec }) => cardGauge(spec) },
  { heading: 'Pull', share: 20, cell: ({ tensionN }) => forceInWords(tensionN) },
  { heading: 'Pull wished for', share: 20, cell: ({ wishedTensionN }) => forceInWords(wishedTensionN) },
];

const LIKED: readonly Column<CardString>[] = [
  { heading: 'Beside what you like now', share: 36, cell: ({ feel }) => feel },
];
