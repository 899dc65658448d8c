import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Day } from '../core/day/index.js';
import { PageStream } from './page-stream.js';
import { Pen } from './pen.js';

/** What a document says about itself. */
export interface PaperAbout {
  readonly title: string;
  readonly day: Pick<Day, 'date'> & { readonly shop: Pick<Day['shop'], 'name' | 'invented'> };
}

/**
 * The bytes of a PDF document that `draw` draws: A4, fonts embedded as subsets, tagged, in British English.
 * The creation date is the day's, so that equal days give equal bytes.
 */
export function printPaper(about: PaperAbout, draw: (pen: Pen) => void): Promise<Uint8Array> {
  const doc = new PageStream({
    size: 'A4',
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en-GB',
    displayTitle: true,
    info: {
      Title: about.title,
      Author: about.day.shop.name,
      Creator: 'Tautwork',
      CreationDate: new Date(`${about.day.date}T00:00:00Z`),
    },
  });
  const bytes = collect(doc);
  doc.registerFont('regular', readFileSync(FONT_FILES.regular));
  doc.registerFont('bold', readFileSync(FONT_FILES.bold));
  const root = doc.struct('Document');
  doc.addStructure(root);
  draw(new Pen(doc, root));
  root.end();
  doc.end();
  return bytes;
}

const { resolve } = createRequire(import.meta.url);

/** The condensed cut: long recipe names and tables of figures fit without smaller type. */
const FONT_FILES = {
  regular: resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'),
  bold: resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf'),
};

const collect = (doc: PDFKit.PDFDocument): Promise<Uint8Array> =>
  new Promise((resolveBytes, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('end', () => resolveBytes(new Uint8Array(Buffer.concat(chunks))));
    doc.on('error', reject);
  });
