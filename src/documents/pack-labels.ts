import { type BodyOf, dateInWords, gaugesInWords, listInWords } from '../contract/index.js';
import { type CalendarDate, calendarDate } from '../core/foundation/index.js';
import { LABELS_3_BY_8, type LabelSheet } from './label-sheet.js';
import { type Label, printLabels, shopOnLabel } from './labels.js';

/** A pack with what its label tells beside it. */
export interface LabelledPack {
  readonly pack: BodyOf<'pack'>;
  readonly order: BodyOf<'order'>;
  /** The lots of the strings that are in it, by name. */
  readonly lots: readonly string[];
}

export interface PackLabels {
  readonly shop: { readonly name: string; readonly invented: boolean };
  readonly date: CalendarDate;
  readonly packs: readonly LabelledPack[];
  /** On the first sheet, 0 the upper left: the places before it are gone. */
  readonly firstPlace?: number;
  readonly sheet?: LabelSheet;
}

/** A label for each of these packs, to be printed again as often as one likes: the code on it reads as the pack's own. */
export function packLabelsPdf({
  shop,
  date,
  packs,
  firstPlace = 0,
  sheet = LABELS_3_BY_8,
}: PackLabels): Promise<Uint8Array> {
  const labels = packs.map((labelled) => ({ ...labelOf(labelled), shop: shopOnLabel(shop) }));
  const about = { title: `Labels, ${dateInWords(date)}`, day: { shop, date } };
  return printLabels(labels, { about, sheet, firstPlace });
}

function labelOf({ pack, order, lots }: LabelledPack): Omit<Label, 'shop'> {
  const { quantity } = order.lines.find((line) => line.lineNumber === pack.lineNumber) ?? { quantity: 1 };
  const due = calendarDate(order.due);
  return {
    player: order.player,
    setName: pack.setName,
    gauges: gaugesInWords(pack.wanted.map(({ spec }) => spec)),
    order: [
      `Order ${order.number}`,
      `${pack.copy} of ${quantity}`,
      ...(due ? [`due ${dateInWords(due)}`] : []),
    ].join(' · '),
    origin: lots.length > 0 ? `From ${listInWords(lots)}` : '',
    code: pack.labelCode,
  };
}
