import { describe, expect, it } from 'vitest';
import { weighing } from './weighing.js';

const spool = (weighedKg: number) => ({
  body: {
    name: 'steel 10 / 1',
    wireId: '',
    lot: '7',
    tareKg: 0.3,
    receivedAt: '',
    weighed: { grossKg: weighedKg, at: '' },
  },
});

describe('a spool on the scale', () => {
  it('tells how far scale and books are apart before it is written', () => {
    const found = weighing(spool(2.3), 1.8, 2.082);
    expect(found.netKg).toBe(1.782);
    expect(found.differenceKg).toBe(-0.018);
    expect(found.share).toBeCloseTo(-0.01);
    expect(found).toMatchObject({ isLighterThanEmpty: false, isHeavierThanBefore: false, empties: false });
  });

  it('cannot weigh less than empty, and does not grow', () => {
    expect(weighing(spool(2.3), 1.8, 0.2).isLighterThanEmpty).toBe(true);
    expect(weighing(spool(2.3), 1.8, 2.4).isHeavierThanBefore).toBe(true);
  });

  it('is used up where it weighs what the empty spool does', () => {
    const found = weighing(spool(2.3), 0.012, 0.3);
    expect(found).toMatchObject({ empties: true, differenceKg: -0.012 });
  });

  it('has no share of a difference where the books say that nothing is there', () => {
    expect(weighing(spool(2.3), 0, 0.4).share).toBeUndefined();
  });
});
