import Type, { type Static } from 'typebox';

/** What the API answers when it does not do what was asked (RFC 9457), always as `application/problem+json`. */
export const problemDetails = Type.Object(
  {
    type: Type.String({ description: 'where the kind of problem is told of' }),
    title: Type.String({ description: 'the status in words' }),
    status: Type.Integer({ minimum: 400, maximum: 599 }),
    code: Type.String({ description: 'stable word for programs: `stale-version`, `stock.overdrawn`' }),
    detail: Type.String({ description: 'what is wrong and how to mend it, for people' }),
    instance: Type.String({ description: 'what was asked for' }),
    requestId: Type.String({ description: 'finds the request in the log' }),
  },
  { additionalProperties: true, description: 'A problem; more fields tell its facts' },
);

export type ProblemDetails = Static<typeof problemDetails> & { readonly [fact: string]: unknown };
