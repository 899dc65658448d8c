import { dateInWords } from '../contract/index.js';
import type { Day } from '../core/day/index.js';
import { GAP, INK, PAGE, RULE, TYPE } from './look.js';
import type { PaperAbout } from './paper.js';
import { lineHeight, type Pen, type StructureKind } from './pen.js';

/** Pages that fill from top to bottom: where the next part goes, and when a new page begins. */
export class Pages {
  y: number = PAGE.bottom;
  readonly left = PAGE.left;
  readonly width = PAGE.right - PAGE.left;

  constructor(
    readonly pen: Pen,
    private readonly about: PaperAbout,
  ) {}

  get roomLeft(): number {
    return PAGE.bottom - this.y;
  }

  newPage(): void {
    this.pen.doc.addPage();
    this.y = PAGE.top;
  }

  /** Begins a new page where `height` does not fit any more; tells whether it did. */
  makeRoom(height: number): boolean {
    if (height <= this.roomLeft) return false;
    this.newPage();
    return true;
  }

  /** A heading that keeps `follows` points of what it heads on its page. */
  heading(text: string, kind: StructureKind = 'H2', follows: number = FOLLOWS): void {
    const style = kind === 'H1' ? TYPE.large : kind === 'H2' ? TYPE.title : TYPE.heading;
    const above = this.y > PAGE.top ? GAP.section : 0;
    if (!this.makeRoom(above + lineHeight(style) + follows)) this.y += above;
    this.pen.tag(kind, () => this.pen.line(text, this.here(), style));
    this.y += lineHeight(style) + GAP.small;
  }

  paragraph(text: string, style = TYPE.body as (typeof TYPE)[keyof typeof TYPE]): void {
    const lines = this.pen.wrap(text, this.width, style);
    this.makeRoom(Math.min(lines.length, 3) * lineHeight(style));
    for (const line of lines) {
      this.makeRoom(lineHeight(style));
      this.pen.tag('P', () => this.pen.line(line, this.here(), style));
      this.y += lineHeight(style);
    }
    this.y += GAP.small;
  }

  here(): { x: number; y: number; width: number } {
    return { x: this.left, y: this.y, width: this.width };
  }

  /** Puts shop, day, title and page number on every page; called once, when all are drawn. */
  finish(): void {
    const { count } = this.pen.doc.bufferedPageRange();
    for (let index = 0; index < count; index++) {
      this.pen.doc.switchToPage(index);
      this.pen.ornament(() => this.runningLines(`page ${index + 1} of ${count}`));
    }
  }

  private runningLines(pageNumber: string): void {
    const { shop, date } = this.about.day;
    const head = { ...this.here(), y: PAGE.headerAt };
    const foot = { ...this.here(), y: PAGE.footerAt };
    this.pen.line(shopInWords(shop), { ...head, width: this.width * 0.6 }, TYPE.smallStrong);
    this.pen.line(dateInWords(date), head, TYPE.smallStrong, 'right');
    const under = PAGE.headerAt + lineHeight(TYPE.smallStrong) + 2;
    this.pen.rule({ x: PAGE.left, y: under }, { x: PAGE.right, y: under }, RULE.hair, INK.rule);
    this.pen.line(this.about.title, { ...foot, width: this.width * 0.8 }, TYPE.small);
    this.pen.line(pageNumber, foot, TYPE.small, 'right');
  }
}

/** The shop's name; the invented one never goes without saying that it is. */
export const shopInWords = (shop: Pick<Day['shop'], 'name' | 'invented'>): string =>
  shop.invented ? `${shop.name} · invented demo workshop` : shop.name;

/** A heading never stands alone at the foot of a page: two rows of a table go with it. */
const FOLLOWS = 40;
