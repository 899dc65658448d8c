import { describe, expect, it } from 'vitest';
import { type FieldSpec, formInWords, formOf, readForm } from './form-spec.js';

const MINUTES = { units: { '': 1 }, bare: '', least: 0, most: 60 };
const SPECS: readonly FieldSpec[] = [
  { path: 'name', label: 'Name', group: 'It', kind: { type: 'text' } },
  { path: 'change.base', label: 'Base', group: 'Change', kind: { type: 'amount', rule: MINUTES } },
  {
    path: 'size',
    label: 'Size',
    group: 'It',
    kind: { type: 'amount', rule: { units: { mm: 0.001 }, bare: 'mm', least: 0, most: 1 }, optional: true },
  },
  {
    path: 'limits.room.most',
    label: 'Most',
    group: 'Limits',
    kind: { type: 'amount', rule: MINUTES, optional: true },
  },
  {
    path: 'positions',
    label: 'Positions',
    group: 'It',
    kind: {
      type: 'choice',
      numeric: true,
      options: [
        { value: '1', label: 'one' },
        { value: '2', label: 'two' },
      ],
    },
  },
  { path: 'hex', label: 'Hex', group: 'It', kind: { type: 'flag' } },
  {
    path: 'days',
    label: 'Days',
    group: 'It',
    kind: {
      type: 'several',
      options: [
        { value: '1', label: 'Monday' },
        { value: '5', label: 'Friday' },
      ],
    },
  },
];
const BODY = {
  name: 'Wren',
  change: { base: 6, core: 7 },
  size: 0.25,
  positions: 2,
  hex: true,
  days: [1, 5],
};

describe('a form of a record', () => {
  it('says what the record says, and reads back as the same record, what it does not show too', () => {
    const draft = formOf(BODY, SPECS);
    expect(draft).toMatchObject({ size: '250', hex: 'yes', days: '1 5', positions: '2' });
    expect(readForm(BODY, draft, SPECS).body).toEqual(BODY);
  });

  it('names the fields that cannot be read, and gives no body then', () => {
    const { body, faults } = readForm(
      BODY,
      { ...formOf(BODY, SPECS), 'change.base': '90', name: ' ' },
      SPECS,
    );
    expect(body).toBeUndefined();
    expect(faults).toEqual(['name', 'change.base']);
  });

  it('leaves out what may be left out and is empty, with the part that held it', () => {
    const draft = { ...formOf(BODY, SPECS), size: '', 'limits.room.most': '' };
    const { body } = readForm({ ...BODY, limits: { room: { most: 5 } } }, draft, SPECS);
    expect(body).not.toHaveProperty('size');
    expect(body).not.toHaveProperty('limits');
  });

  it('is told in words, by the labels of what was chosen', () => {
    const words = formInWords(formOf(BODY, SPECS), SPECS);
    expect(words).toContainEqual({ name: 'It: Positions', value: 'two' });
    expect(words).toContainEqual({ name: 'It: Days', value: 'Monday, Friday' });
    expect(words).toContainEqual({ name: 'Limits: Most', value: '—' });
  });
});
