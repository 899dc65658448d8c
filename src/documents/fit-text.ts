export const ELLIPSIS = '…';

/** The text with line breaks and other control signs made blanks: a cell of a file may hold anything. */
export const onOneLine = (text: string): string => text.replace(/\p{Cc}+/gu, ' ');

/** Width of a text. A line is as wide as its words together, the blanks after them included: nothing is kerned over a blank. */
type Measure = (text: string) => number;

/** The text, or as much of it as fits `width` with an ellipsis after it; empty where not even that fits. */
export function shortenText(text: string, width: number, measure: Measure): string {
  if (measure(text) <= width) return text;
  const signs = [...text];
  let fits = 0;
  let tooMany = signs.length;
  while (tooMany - fits > 1) {
    const middle = (fits + tooMany) >> 1;
    if (measure(headWithEllipsis(signs, middle)) <= width) fits = middle;
    else tooMany = middle;
  }
  return fits > 0 ? headWithEllipsis(signs, fits) : measure(ELLIPSIS) <= width ? ELLIPSIS : '';
}

/**
 * The text in lines that each fit `width`, broken between words, or inside a word that alone is too wide.
 * No more than `mostLines`; the last one then ends in an ellipsis.
 */
export function wrapText(text: string, width: number, measure: Measure, mostLines = Infinity): string[] {
  const lines: string[] = [];
  let rest = text.trim();
  while (rest !== '' && lines.length < mostLines - 1) {
    const line = firstLine(rest, width, measure);
    lines.push(line.trimEnd());
    rest = rest.slice(line.length).trimStart();
  }
  if (rest !== '') lines.push(shortenText(rest, width, measure));
  return lines;
}

function firstLine(text: string, width: number, measure: Measure): string {
  if (measure(text) <= width) return text;
  let line = '';
  let lineWidth = 0;
  for (const word of text.match(/\S+\s*/g) ?? []) {
    if (lineWidth + measure(word.trimEnd()) > width) break;
    line += word;
    lineWidth += measure(word);
  }
  return line || headThatFits(text, width, measure);
}

/** Broken after a hyphen where there is one; at least one sign, so that wrapping always comes to an end. */
function headThatFits(text: string, width: number, measure: Measure): string {
  let head = '';
  for (const sign of text) {
    if (head !== '' && measure(head + sign) > width) break;
    head += sign;
  }
  const hyphen = head.lastIndexOf('-');
  return hyphen > 0 && head.length < text.length ? head.slice(0, hyphen + 1) : head;
}

const headWithEllipsis = (signs: readonly string[], count: number): string =>
  signs.slice(0, count).join('').trimEnd() + ELLIPSIS;
