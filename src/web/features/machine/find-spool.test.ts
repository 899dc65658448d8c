import { describe, expect, it } from 'vitest';
import type { RecordOf } from '../../api/use-records.js';
import { findSpool, mountable } from './find-spool.js';

type Spool = RecordOf<'spool'>;

const spool = (id: string, change: Partial<Spool['body']> = {}, state = 'on-shelf'): Spool =>
  ({ id, state, body: { name: id, wireId: 'wire 10', lot: 'lot 1', tareKg: 0, ...change } }) as Spool;

const SPOOLS = [
  spool('Ten / 1'),
  spool('Ten / 2', { lot: 'lot 2' }),
  spool('Ten / 3', { lot: 'lot 2' }),
  spool('Other / 1', { wireId: 'other', lot: 'lot 9' }),
  spool('Ten / 4', { lot: 'lot 4', machineId: 'there' }, 'on-machine'),
  spool('Ten / 5', { lot: 'lot 5' }, 'quarantined'),
  spool('Ten / 6', { lot: 'lot 6', machineId: 'here' }, 'on-machine'),
];

const found = (text: string, onIt: readonly string[] = []) =>
  findSpool(text, { spools: SPOOLS, wireIds: ['wire 10'], machineId: 'here', onIt });

describe('a label under the scanner', () => {
  it('is found by the spool’s name, however it is spaced and cased, or by its lot', () => {
    expect(found('ten  / 1')).toMatchObject({ kind: 'right', spool: { id: 'Ten / 1' } });
    expect(found('LOT 1')).toMatchObject({ kind: 'right', spool: { id: 'Ten / 1' } });
  });

  it('is refused where its wire is not of the run', () => {
    expect(found('Other / 1').kind).toBe('wrong-wire');
    expect(found('lot 9').kind).toBe('wrong-wire');
  });

  it('asks which, where the lot is on several; where one of them is on already, it is the other', () => {
    expect(found('lot 2')).toMatchObject({ kind: 'several', spools: [{ id: 'Ten / 2' }, { id: 'Ten / 3' }] });
    expect(found('lot 2', ['Ten / 2'])).toMatchObject({ kind: 'right', spool: { id: 'Ten / 3' } });
  });

  it('says what hinders a spool of the right wire', () => {
    expect(found('Ten / 4').kind).toBe('elsewhere');
    expect(found('Ten / 5').kind).toBe('quarantined');
    expect(found('Ten / 1', ['Ten / 1']).kind).toBe('already');
    expect(found('Ten / 6').kind).toBe('right');
    expect(found('nothing').kind).toBe('unknown');
  });
});

it('spools to touch are those on the shelf, and those that this machine has for another run', () => {
  const names = mountable(SPOOLS, { wireId: 'wire 10', machineId: 'here' }).map(({ id }) => id);
  expect(names).toEqual(['Ten / 1', 'Ten / 2', 'Ten / 3', 'Ten / 6']);
});
