import { normal } from '../../../demo/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import type { RunToWind, SpoolsOfWire } from './choose-runs.js';
import type { HistoryBook, ShopSpool } from './history-book.js';

/** An empty spool of unknown weight is thrown on the scale with what still clings to it. */
const CLINGS_KG = 0.001;
/** How far what is truly wound differs from what the recipe says, run by run. */
const USE_SHARE = 0.005;
const SCALE_DIGIT_KG = 0.001;
/** A scale that says less than this of what the recipe says is weighed again another day. */
const BELIEVABLE_SHARE = 0.95;

interface Change {
  readonly oldSpoolId: string;
  readonly oldGrossKg: number;
  readonly newSpoolId: string;
}

/** Remnants run empty in the middle of a run: each is taken off by weight, and another put in its place. */
export function useUpRemnants(book: HistoryBook, { machine, spools }: RunToWind): readonly Change[] {
  return spools.flatMap((ofWire) => {
    const { first, second } = ofWire;
    if (!second) return [];
    const oldGrossKg = Math.max(first.tareKg, CLINGS_KG);
    ofWire.remnantMg = first.bookMg - mgFromKg(oldGrossKg - first.tareKg);
    book.spools.splice(book.spools.indexOf(first), 1);
    second.machine = machine;
    return [{ oldSpoolId: first.id, oldGrossKg, newSpoolId: second.id }];
  });
}

/** What the strings of a run truly took. */
export function takeFromSpools({ chance }: HistoryBook, { spools }: RunToWind, strings: number): void {
  for (const ofWire of spools) {
    const spool = windsNow(ofWire);
    const mg = ofWire.mgPerString * strings * (1 + normal(chance, USE_SHARE)) - ofWire.remnantMg;
    spool.trueMg = Math.max(0, spool.trueMg - Math.max(0, mg));
  }
}

/** Spools as the scale has them at the end of a run, as far as it can be believed. */
export function spoolsAtClose({ spools }: RunToWind, good: number) {
  return spools.flatMap((ofWire) => {
    const spool = windsNow(ofWire);
    const grossKg = onTheScaleKg(spool);
    const takenMg = spool.bookMg - mgFromKg(grossKg - spool.tareKg);
    const neededMg = ofWire.mgPerString * good - ofWire.remnantMg;
    if (takenMg < 0 || takenMg < BELIEVABLE_SHARE * neededMg) return [];
    spool.grossKg = grossKg;
    return [{ spoolId: spool.id, grossKg }];
  });
}

/** After the run: spools off the machine, the books as the shop's answer has them. */
export function spoolsBack(
  { usedMg }: HistoryBook,
  { spools }: RunToWind,
  wire: readonly { readonly spoolId: string; readonly mg: number }[],
): void {
  for (const ofWire of spools) {
    const spool = windsNow(ofWire);
    spool.machine = undefined;
    const mg = wire.find(({ spoolId }) => spoolId === spool.id)?.mg ?? 0;
    spool.bookMg -= mg;
    usedMg.set(ofWire.wire, (usedMg.get(ofWire.wire) ?? 0) + mg);
  }
}

/** What the scale shows: whole grams, and never more than at the last weighing, since wire does not grow. */
export const onTheScaleKg = ({ tareKg, trueMg, grossKg }: ShopSpool): number => {
  const digits = Math.round((tareKg + trueMg / 1e6) / SCALE_DIGIT_KG);
  return Math.min(grossKg, Number((digits * SCALE_DIGIT_KG).toFixed(3)));
};

const windsNow = ({ first, second }: SpoolsOfWire): ShopSpool => second ?? first;
