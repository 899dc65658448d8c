import { Compile } from 'typebox/compile';
import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { ShopSchema } from '../contract/index.js';
import { shapeErrors } from './shape-errors.js';

const validator = Compile(ShopSchema);
type Loose = Record<string, Record<string, unknown>[]>;

/** What is said of the demo workshop after a change to it. */
function said(change: (shop: Loose) => void): readonly string[] {
  const shop = structuredClone(demoWorkshop()) as unknown as Loose;
  change(shop);
  return shapeErrors(validator.Errors(shop)).map(({ path, message }) => `${path} ${message}`);
}

describe('what a shop file has wrong in its shape', () => {
  it('is nothing for the demo workshop', () => {
    expect(said(() => {})).toEqual([]);
  });

  it('is said once a place', () => {
    expect(
      said((shop) => {
        shop.wires![0]!.colour = 'red';
        shop.wires![1]!.sizeM = 'thick';
        delete shop.wires![2]!.alloy;
        shop.wires![3]!.shape = 'square';
      }),
    ).toEqual([
      '/wires/0/colour is not known here',
      '/wires/1/sizeM must be number',
      '/wires/2 lacks alloy',
      '/wires/3/shape must be one of round, hex',
    ]);
  });

  it('of a machine is told by the form that it comes nearest to', () => {
    const gear = demoWorkshop().machines.findIndex((machine) => 'dialTable' in machine);
    expect(
      said((shop) => {
        shop.machines![gear]!.dialStep = 0;
      }),
    ).toEqual([`/machines/${gear}/dialStep must be > 0`]);
    expect(
      said((shop) => {
        shop.machines![0]!.positions = 3;
      }),
    ).toEqual(['/machines/0/positions must be 1 or must be 2']);
  });
});
