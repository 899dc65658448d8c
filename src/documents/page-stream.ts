import PDFDocument from 'pdfkit';

/**
 * The library's document, made to keep what is drawn on a page as one text until the page is left. As it
 * comes, every stroke becomes a small array of bytes; a roll of a thousand sets has a hundred thousand
 * strokes, and a third of the time went into clearing them away.
 */
export class PageStream extends PDFDocument {
  private held = '';

  override addContent(content: string): this {
    this.held += `${content}\n`;
    return this;
  }

  override addPage(options?: PDFKit.PDFDocumentOptions): this {
    this.handOver();
    super.addPage(options);
    return this;
  }

  override switchToPage(index?: number): PDFKit.PDFPage {
    this.handOver();
    return super.switchToPage(index);
  }

  override end(): void {
    this.handOver();
    super.end();
  }

  private handOver(): void {
    if (this.held !== '') super.addContent(this.held);
    this.held = '';
  }
}
