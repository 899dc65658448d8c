import Type, { type TUnsafe } from 'typebox';

/** One of the words given. */
export const oneOf = <const Word extends string>(
  words: readonly Word[],
  description?: string,
): TUnsafe<Word> =>
  Type.Unsafe<Word>({
    type: 'string',
    enum: [...words],
    ...(description === undefined ? {} : { description }),
  });

/** An object that holds these fields and no others: a mistyped field is a fault, not a silence. */
export const closed = <const Fields extends Parameters<typeof Type.Object>[0]>(
  fields: Fields,
  description?: string,
) =>
  Type.Object(fields, {
    additionalProperties: false,
    ...(description === undefined ? {} : { description }),
  });

export const text = (description?: string) =>
  Type.String({ minLength: 1, ...(description === undefined ? {} : { description }) });

export const positive = (description: string) => Type.Number({ exclusiveMinimum: 0, description });
export const notNegative = (description: string) => Type.Number({ minimum: 0, description });
export const within = (minimum: number, maximum: number, description: string) =>
  Type.Number({ minimum, maximum, description });
export const wholeFrom = (minimum: number, description: string) => Type.Integer({ minimum, description });
export const wholeWithin = (minimum: number, maximum: number, description: string) =>
  Type.Integer({ minimum, maximum, description });
export const share = (description: string) => Type.Number({ minimum: 0, description });

export const MATERIALS = [
  'plain-steel',
  'nickel-plated-steel',
  'pure-nickel',
  'stainless-steel',
  'phosphor-bronze',
  'bronze-80-20',
] as const;

export const ALLOYS = [
  'music-wire',
  'nickel-plated-steel',
  'pure-nickel',
  'nickel-iron',
  'nickel-copper',
  'stainless-304',
  'stainless-430',
  'phosphor-bronze',
  'phosphor-bronze-8',
  'bronze-80-20',
  'brass-70-30',
  'aluminium-bronze',
  'copper',
  'silver-plated-copper',
  'silver',
  'nylon',
  'pvdf',
] as const;

export const STRENGTH_TABLES = [
  'astm-a228',
  'en-10270-1-dh',
  'en-10270-1-sh',
  'en-10270-1-sm',
  'jis-g-3522-a',
  'jis-g-3522-b',
] as const;

export const date = Type.String({ pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'A day, YYYY-MM-DD' });

export const estimate = closed(
  { value: Type.Number(), u: Type.Number({ minimum: 0, description: 'standard uncertainty, same unit' }) },
  'A figure with its standard uncertainty',
);

export const stringSpec = closed(
  {
    gaugeThou: positive('finished outside diameter, thousandths of an inch'),
    kind: oneOf(['plain', 'wound']),
    material: oneOf(MATERIALS),
    end: oneOf(['ball', 'loop']),
    lengthM: positive('length over all, m'),
  },
  'A finished string as it lies in a bin',
);
