import { beforeAll, describe, expect, it } from 'vitest';
import { demoShop } from '../../test/fixtures/invented-shop.js';
import { canReadText, misplacedWords, pageCount, runningText } from '../../test/fixtures/read-pdf.js';
import type { BodyOf } from '../contract/index.js';
import type { Shop } from '../core/day/index.js';
import type { CalendarDate } from '../core/foundation/index.js';
import { giveAnswer, type PlayerRequest } from '../core/orders/index.js';
import { fanScaleLengthsM, USUAL_TUNINGS } from '../core/sets/index.js';
import { playerCardPdf } from './player-card.js';

let shop: Shop;
beforeAll(async () => {
  shop = await demoShop();
});

const tuned = (name: string) => USUAL_TUNINGS.find((tuning) => tuning.name === name)!;

const asked = (strings: number, wish: Partial<PlayerRequest> = {}): PlayerRequest => ({
  instrument: {
    name: `electric of ${strings}`,
    scaleLengthsM: fanScaleLengthsM({ trebleM: 0.648, bassM: 0.648, count: strings }),
  },
  tuning: USUAL_TUNINGS.find(({ pitches }) => pitches.length === strings)!,
  octavesAssumed: false,
  material: 'nickel-plated-steel',
  end: 'ball',
  wishes: { target: 'even', pullsN: [70] },
  ...wish,
});

function answered(request: PlayerRequest): BodyOf<'request'> {
  const answer = giveAnswer({ request, quantity: 1 }, shop);
  if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
  // The card reads what is kept of an answer, and that is plain data.
  const body = { player: 'Jorla Barleycroft', letter: '', quantity: 1, request, answer: answer.value };
  return structuredClone(body) as unknown as BodyOf<'request'>;
}

const print = (request: BodyOf<'request'>) =>
  playerCardPdf({
    shop: { name: 'Saltmarsh Strings', invented: true },
    date: '2027-03-05' as CalendarDate,
    request,
  })!;

describe('a player’s card on paper', () => {
  it('is one page for six strings and for twelve, and the same bytes for the same answer', async () => {
    for (const strings of [6, 12]) {
      const body = answered(asked(strings));
      const pdf = await print(body);
      expect(pageCount(pdf)).toBe(1);
      expect(await print(body)).toEqual(pdf);
    }
  });

  it('is not printed before there is an answer', () => {
    const { answer: _, ...waiting } = answered(asked(6));
    expect(
      playerCardPdf({
        shop: { name: 'Saltmarsh Strings', invented: true },
        date: '2027-03-05' as CalendarDate,
        request: waiting,
      }),
    ).toBeUndefined();
  });

  it.skipIf(!canReadText)('tells gauges, notes, pulls, the neck, and what to mind', async () => {
    const body = answered(asked(6));
    const text = runningText(await print(body));
    expect(text).toContain('Strings for Jorla Barleycroft');
    const { strings, figures } = body.answer!;
    expect(text).toContain(strings.map(({ spec }) => spec.gaugeThou).join(' '));
    for (const { tensionN } of figures) expect(text).toContain(`${tensionN.toFixed(1)} N`);
    expect(text).toContain('tuned E2 A2 D3 G3 B3 E4');
    expect(text).toContain('ask whoever set it up');
    expect(text).toContain('eyes away from the string');
    expect(text).not.toContain('Beside what you like now');
    expect(text).toContain('invented demo workshop');
  });

  it.skipIf(!canReadText)('tells beside what is liked only where that was told', async () => {
    const liked = shop.sets.find(({ strings }) => strings.length === 6)!;
    const request = asked(6);
    const reference = {
      strings: liked.strings.map(({ gaugeThou, kind }) => ({ gaugeThou, kind })),
      material: 'nickel-plated-steel',
      instrument: request.instrument,
      tuning: tuned('standard six-string'),
    } as const;
    const lower = {
      ...tuned('standard six-string'),
      pitches: request.tuning.pitches.map(({ midi, cents }) => ({ midi: midi - 2, cents })),
    };
    const text = runningText(
      await print(
        answered({ ...request, tuning: lower, reference, wishes: { target: 'feel', heavierBass: 0.1 } }),
      ),
    );
    expect(text).toContain('Beside what you like now');
    expect(text).toMatch(/pulls \d+ % more/);
    expect(text).toMatch(/of the strings that you like now/);
  });

  it.skipIf(!canReadText)(
    'has no word off the page or over another, fan and twelve strings too',
    async () => {
      const fan = fanScaleLengthsM({ trebleM: 0.648, bassM: 0.686, count: 7 });
      for (const request of [
        asked(12),
        asked(7, {
          instrument: { name: 'a fan of seven with quite a long name of its own', scaleLengthsM: fan },
        }),
      ])
        expect(misplacedWords(await print(answered(request)))).toEqual([]);
    },
  );
});
