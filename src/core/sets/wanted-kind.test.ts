import { describe, expect, it } from 'vitest';
import { wantedKind } from './wanted-kind.js';

describe('a gauge with nothing beside it', () => {
  it("is plain up to the shop's limit and wound above", () => {
    expect(wantedKind({ gaugeThou: 20 }, { plainUpToThou: 20 })).toBe('plain');
    expect(wantedKind({ gaugeThou: 20.5 }, { plainUpToThou: 20 })).toBe('wound');
  });

  it('is what is written beside it where something is', () => {
    expect(wantedKind({ gaugeThou: 18, kind: 'wound' }, { plainUpToThou: 20 })).toBe('wound');
    expect(wantedKind({ gaugeThou: 24, kind: 'plain' }, { plainUpToThou: 20 })).toBe('plain');
  });
});
