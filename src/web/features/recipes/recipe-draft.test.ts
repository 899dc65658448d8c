import { describe, expect, it } from 'vitest';
import { metresFromThou } from '../../../core/units/index.js';
import {
  draftOf,
  EMPTY_DRAFT,
  EMPTY_WRAP,
  type RecipeDraft,
  readDraft,
  type WireRecord,
} from './recipe-draft.js';

const wire = (
  id: string,
  body: Omit<WireRecord['body'], 'name' | 'priceMinorPerKg'>,
): [string, WireRecord] => [
  id,
  {
    id,
    version: 1,
    state: '',
    createdAt: '',
    updatedAt: '',
    body: { name: id, priceMinorPerKg: 100, ...body },
  },
];
const WIRES = new Map([
  wire('hex 18', {
    use: 'core',
    shape: 'hex',
    sizeM: metresFromThou(18),
    alloy: 'music-wire',
    strengthTable: 'astm-a228',
  }),
  wire('nickel 14', { use: 'wrap', shape: 'round', sizeM: metresFromThou(14), alloy: 'pure-nickel' }),
]);
const DRAFT: RecipeDraft = {
  ...EMPTY_DRAFT,
  name: ' nickel 46 ',
  gauge: '.046',
  material: 'pure-nickel',
  coreWireId: 'hex 18',
  wraps: [{ ...EMPTY_WRAP, wireId: 'nickel 14', gapPercent: '1,5' }],
};

describe('a draft of a recipe', () => {
  it('is read as the recipe that it says, and a recipe as the draft that says it', () => {
    const { body } = readDraft(DRAFT, WIRES);
    expect(body).toMatchObject({ name: 'nickel 46', gaugeThou: 46, wrapWireIds: ['nickel 14'] });
    expect(body?.construction).toMatchObject({
      kind: 'wound',
      core: { shape: 'hex' },
      layers: [{ wireDiameterM: metresFromThou(14), gap: 0.015 }],
    });
    expect(readDraft(draftOf(body!), WIRES).body).toEqual(body);
  });

  it('says what is still missing', () => {
    expect([...readDraft(EMPTY_DRAFT, WIRES).faults]).toEqual(['name', 'gauge', 'core', 'wrap']);
    const wide = { ...DRAFT, wraps: [{ ...DRAFT.wraps[0]!, rolledTo: 'flat' }] };
    expect([...readDraft(wide, WIRES).faults]).toEqual(['layer']);
  });

  it('of a plain string takes a round wire and no wrap', () => {
    expect([...readDraft({ ...DRAFT, material: 'plain-steel' }, WIRES).faults]).toEqual(['core']);
  });
});
