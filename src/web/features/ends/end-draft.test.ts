import { describe, expect, it } from 'vitest';
import { type Answered, answered, draftFrom, type EndDraft, NEW_DRAFT } from './end-draft.js';

const ASKED = { piece: { lengthM: 1, leastBreakingN: 190 }, pullUnit: 'N' } as const;

/** Types one answer after the other, as a hand does. */
function typing(...answers: readonly string[]): Answered {
  let draft: EndDraft = NEW_DRAFT;
  let last: Answered = { kind: 'next', draft };
  for (const text of answers) {
    const result = answered(draft, text, ASKED);
    if (!result.ok) throw new Error(`${draft.step}: ${result.fault.code}`);
    last = result.value;
    if (last.kind === 'next') draft = last.draft;
  }
  return last;
}

describe('an end as it is typed in', () => {
  it('takes digits and Enter from length to pull, with comma or point', () => {
    expect(typing('1001,5', '9', '0.5', '1', '124,2', '1')).toEqual({
      kind: 'done',
      check: {
        lengthM: 1.0015,
        twists: 9,
        tailM: 0.0005,
        seat: 'straight',
        pull: { forceN: 124.2, came: 'held' },
      },
    });
  });

  it('leaves out what was passed over with Enter alone, and never makes a nought of it', () => {
    expect(typing('', '9', '', '', '')).toEqual({ kind: 'done', check: { twists: 9 } });
    expect(typing('', '', '0', '', '')).toEqual({ kind: 'done', check: { tailM: 0 } });
    expect(typing('', '', '', '', '')).toEqual({ kind: 'done', check: undefined });
  });

  it('reads a unit that is written, and the person’s own where none is', () => {
    expect(typing('', '', '', '', '28 lbf')).toMatchObject({ draft: { forceN: expect.closeTo(124.55, 2) } });
    const inPounds = answered({ ...NEW_DRAFT, step: 'pull' }, '28', { ...ASKED, pullUnit: 'lbf' });
    expect(inPounds.ok && inPounds.value).toMatchObject({ draft: { forceN: expect.closeTo(124.55, 2) } });
  });

  it('refuses nonsense with what is possible', () => {
    const at = (step: EndDraft['step'], text: string) => answered({ ...NEW_DRAFT, step }, text, ASKED);
    expect(at('length', '10')).toEqual({ ok: false, fault: { code: 'range', least: 500, most: 1500 } });
    expect(at('pull', '1240')).toMatchObject({ fault: { code: 'range', most: 380 } });
    expect(at('twists', 'nine')).toEqual({ ok: false, fault: { code: 'unreadable' } });
    expect(at('seat', '4')).toEqual({ ok: false, fault: { code: 'unreadable' } });
    // A force without its outcome would say nothing.
    expect(at('came', '')).toEqual({ ok: false, fault: { code: 'unreadable' } });
  });

  it('goes on where it was left, and begins anew where what was kept is torn', () => {
    const halfway: EndDraft = { step: 'tail', found: { lengthM: 1, twists: 9 } };
    expect(draftFrom(JSON.stringify(halfway))).toEqual(halfway);
    for (const torn of ['', '{', 'null', '{"step":"lunch","found":{}}'])
      expect(draftFrom(torn)).toEqual(NEW_DRAFT);
  });
});
