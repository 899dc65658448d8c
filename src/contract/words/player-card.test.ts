import { describe, expect, it } from 'vitest';
import type { BodyOf } from '../records/record-kinds.js';
import { feelInWords, playerCard } from './player-card.js';

const body = (totalTensionN: number, likedTensionN?: number): BodyOf<'request'> => ({
  player: 'Jorla Barleycroft',
  letter: '',
  quantity: 2,
  request: {
    instrument: { name: 'baritone 27', scaleLengthsM: [0.6858, 0.6858] },
    tuning: {
      pitches: [
        { midi: 59, cents: 0 },
        { midi: 35, cents: 0 },
      ],
      referenceHz: 440,
    },
    octavesAssumed: false,
    material: 'pure-nickel',
    end: 'ball',
    wishes: { target: 'even', pullsN: [75] },
  },
  answer: {
    setName: '14-68, pure nickel',
    strings: [
      { position: 1, spec: spec(14, 'plain'), stringKey: '14', recipeId: 'a' },
      { position: 2, spec: spec(68, 'wound'), stringKey: '68', recipeId: 'b' },
    ],
    figures: [
      { position: 1, speakingLengthM: 0.6858, frequencyHz: 246.94, tensionN: 76, wishedTensionN: 75 },
      {
        position: 2,
        speakingLengthM: 0.6858,
        frequencyHz: 61.74,
        tensionN: 74,
        wishedTensionN: 75,
        bendForceN: 21,
        liked: { tensionN: 74, bendForceN: 20 },
      },
    ],
    totalTensionN,
    ...(likedTensionN === undefined ? {} : { likedTensionN }),
    warnings: [
      { code: 'neck-load', totalN: 150, referenceN: 130 },
      { code: 'octaves-assumed', tuning: 'B1 B3' },
    ],
  },
});

const spec = (gaugeThou: number, kind: 'plain' | 'wound') =>
  ({
    gaugeThou,
    kind,
    material: kind === 'plain' ? 'plain-steel' : 'pure-nickel',
    end: 'ball',
    lengthM: 1.1,
  }) as const;

describe('the card of a player', () => {
  it('is there once the request is answered', () => {
    const { answer: _, ...waiting } = body(150);
    expect(playerCard(waiting)).toBeUndefined();
  });

  it('names the strings from the treble, and the tuning from the bass as players do', () => {
    const card = playerCard(body(150));
    expect(card?.gauges).toBe('14 68');
    expect(card?.strings.map(({ note }) => note)).toEqual(['B3', 'B1']);
    expect(card?.about).toBe(
      '2 sets of strings wound in pure nickel and plain strings of steel, ball ends, for baritone 27 (686 mm from nut to saddle), tuned B1 B3.',
    );
  });

  it('says once what the neck bears, and cautions where that changes by a twentieth', () => {
    const said = (total: number, liked?: number) =>
      playerCard(body(total, liked), (forceN) => `${forceN} N`)?.neck.join(' ');
    expect(said(150)).toContain('was not told');
    expect(said(150, 148)).toContain('about what it bears now');
    expect(said(150, 130)).toContain(
      'against 130 N of the strings that you like now: 15 % more. The neck is',
    );
    expect(said(130, 150)).toContain('13 % less. The neck will straighten');
    const mind = playerCard(body(150, 130))?.mind ?? [];
    expect(mind).toHaveLength(2);
    expect(mind[1]).toContain('read as B1 B3');
  });

  it('tells how a string will feel only beside one that is liked', () => {
    expect(feelInWords({ tensionN: 76 })).toBe('');
    expect(feelInWords({ tensionN: 76, liked: { tensionN: 75.5 } })).toBe('as now');
    expect(feelInWords({ tensionN: 80, liked: { tensionN: 75 } })).toBe('pulls 7 % more');
    expect(feelInWords({ tensionN: 75, bendForceN: 18, liked: { tensionN: 75, bendForceN: 20 } })).toBe(
      'pulls as now, takes 10 % less to bend',
    );
  });
});
