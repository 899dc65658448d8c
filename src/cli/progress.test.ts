import { describe, expect, it } from 'vitest';
import { progressOn } from './progress.js';

function terminal(isTTY: boolean) {
  const written: string[] = [];
  const stream = { isTTY, write: (text: string) => written.push(text) > 0 };
  return { written, progress: progressOn(stream as unknown as NodeJS.WriteStream) };
}

describe('a progress bar', () => {
  it('shows how far the work is, and is wiped at the end', () => {
    const { written, progress } = terminal(true);
    progress.show(0.5, 'planning');
    progress.end();
    expect(written).toEqual(['\r\u001b[2K████████████░░░░░░░░░░░░ planning', '\r\u001b[2K']);
  });

  it('names new work at once, however soon it comes', () => {
    const { written, progress } = terminal(true);
    progress.show(0.1, 'reading');
    progress.show(0.1, 'planning');
    expect(written.map((text) => text.split(' ').at(-1))).toEqual(['reading', 'planning']);
  });

  it('is silent where nobody looks: a file or a pipe gets no control signs', () => {
    const { written, progress } = terminal(false);
    progress.show(1, 'planning');
    progress.end();
    expect(written).toEqual([]);
  });
});
