import type { WriteStream } from 'node:tty';

/** Shows how far long work is, on one line that is wiped when it ends. */
export interface Progress {
  show(share: number, doing: string): void;
  end(): void;
}

const BAR = 24;
const LEAST_GAP_MS = 80;

/** A bar on a terminal, silence anywhere else: logs and pipes get no control signs. */
export function progressOn(stream: WriteStream | NodeJS.WriteStream): Progress {
  if (!stream.isTTY) return { show: () => {}, end: () => {} };
  let shownAt = 0;
  let shownDoing = '';
  return {
    show: (share, doing) => {
      const now = performance.now();
      // New work is named at once: it may take long before it says anything again.
      if (doing === shownDoing && now - shownAt < LEAST_GAP_MS && share < 1) return;
      [shownAt, shownDoing] = [now, doing];
      const full = Math.round(Math.min(1, Math.max(0, share)) * BAR);
      stream.write(`\r\u001b[2K${'█'.repeat(full)}${'░'.repeat(BAR - full)} ${doing}`);
    },
    end: () => {
      stream.write('\r\u001b[2K');
    },
  };
}
