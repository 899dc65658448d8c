import type { Static } from 'typebox';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { Day, Shop } from '../../core/day/index.js';
import { type DaySchema, ORDER_FAULT_CODES } from './day.js';
import type { ShopSchema } from './shop.js';

/** The core's types are readonly and the schemas' are not; compared are their shapes. */
type Loose<T> = T extends readonly (infer Item)[]
  ? number extends T['length']
    ? Loose<Item>[]
    : { -readonly [At in keyof T]: Loose<T[At]> }
  : T extends string
    ? string extends T
      ? string
      : T extends { readonly calendarDate: true }
        ? string
        : T
    : T extends object
      ? { -readonly [Key in keyof T]: Loose<T[Key]> }
      : T;

describe('the published schemas', () => {
  it('hold every day that the core can make', () => {
    expectTypeOf<Loose<Day>>().toExtend<Loose<Static<typeof DaySchema>>>();
  });

  it('ask no more of a shop than the core does, and no less', () => {
    expectTypeOf<Loose<Shop>>().toExtend<Loose<Static<typeof ShopSchema>>>();
    expectTypeOf<Omit<Loose<Static<typeof ShopSchema>>, '$schema'>>().toExtend<Loose<Shop>>();
  });

  it('name each fault code once', () => {
    expect(new Set(ORDER_FAULT_CODES).size).toBe(ORDER_FAULT_CODES.length);
    expectTypeOf<(typeof ORDER_FAULT_CODES)[number]>().toEqualTypeOf<Day['faults'][number]['code']>();
  });
});
