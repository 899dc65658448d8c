import { fail, type Result, succeed } from '../../../core/foundation/index.js';

/** As much as the shop takes in at once. */
export const MOST_CHARACTERS = 4_000_000;

/** The text of a chosen file: UTF-8, or UTF-16 where its first bytes say so. */
export async function fileText(file: Blob): Promise<Result<string, 'too-large' | 'unreadable'>> {
  // Two bytes a character is the most that a file which is taken can have.
  if (file.size > 2 * MOST_CHARACTERS) return fail('too-large');
  const bytes = new Uint8Array(await file.arrayBuffer());
  try {
    const text = new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
    return text.length > MOST_CHARACTERS ? fail('too-large') : succeed(text);
  } catch {
    return fail('unreadable');
  }
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return 'utf-8';
}

/** Where a line of a text begins and ends, counted from 1; the end of the text for lines that it does not have. */
export function lineSpan(text: string, line: number): readonly [from: number, to: number] {
  let from = 0;
  for (let at = 1; at < line; at++) {
    const end = text.indexOf('\n', from);
    if (end < 0) return [text.length, text.length];
    from = end + 1;
  }
  const end = text.indexOf('\n', from);
  return [from, end < 0 ? text.length : end];
}
