import { Compile } from 'typebox/compile';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALLOWED, READINGS, RECORD_KINDS } from '../../src/contract/index.js';
import { exampleOf } from '../../src/server/index.js';
import { USE_CASES } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly 'x-permission'?: string;
  readonly parameters?: readonly { readonly name: string; readonly required?: boolean }[];
  readonly requestBody?: { readonly content: { readonly 'application/json': { readonly schema: object } } };
  readonly responses: Readonly<Record<string, object>>;
}

let shop: ShopServer;
let document: {
  readonly openapi: string;
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
};

beforeAll(async () => {
  shop = await shopServer();
  const answer = await shop.server.inject('/api/v1/openapi.json');
  expect(answer.statusCode).toBe(200);
  document = answer.json();
});
afterAll(() => shop.close());

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, ...operation })),
  );

describe('the document of the API', () => {
  it('is OpenAPI 3.1, and every reference in it leads somewhere', () => {
    expect(document.openapi).toBe('3.1.0');
    const refs = [...JSON.stringify(document).matchAll(/"\$ref":"(#[^"]*)"/g)].map(([, ref]) => ref!);
    const lost = refs.filter((ref) => at(document, ref) === undefined);
    expect(lost).toEqual([]);
  });

  it('has every use case, with its permission and the schema that checks it', () => {
    for (const { definition } of USE_CASES) {
      const operation = document.paths[`/api/v1${definition.path}`]?.post;
      expect(operation, definition.name).toMatchObject({
        operationId: definition.name,
        summary: definition.summary,
        'x-permission': definition.permission,
      });
      expect(operation!.requestBody!.content['application/json'].schema).toMatchObject({
        required: (definition.input as { readonly required?: readonly string[] }).required ?? [],
      });
    }
  });

  it('has every kind of record and every reading', () => {
    for (const { collection, readPermission } of Object.values(RECORD_KINDS)) {
      for (const path of [`/${collection}`, `/${collection}/{id}`, `/${collection}/{id}/versions`]) {
        expect(document.paths[`/api/v1${path}`]?.get?.['x-permission'], path).toBe(readPermission);
      }
    }
    for (const [name, { permission }] of Object.entries(READINGS)) {
      expect(document.paths[`/api/v1/${name}`]?.get?.['x-permission'], name).toBe(permission);
    }
  });

  it('calls each operation by a name of its own, and says what it does and how it may fail', () => {
    const names = operations().map(({ operationId }) => operationId);
    expect(names).toEqual([...new Set(names)]);
    for (const { operationId, summary, responses } of operations()) {
      expect(summary, operationId).toMatch(/^[A-Z]/);
      expect(Object.keys(responses), operationId).toContain('default');
      expect(Object.keys(responses), operationId).toContain('200');
    }
  });

  it('knows no permission that the table of permissions lacks', () => {
    const told = operations().flatMap((one) => one['x-permission'] ?? []);
    expect(told.filter((permission) => !(permission in ALLOWED))).toEqual([]);
  });

  it('asks for an Idempotency-Key wherever a use case writes', () => {
    const own = new Set(['enrol-device']);
    for (const { definition } of USE_CASES.filter(({ definition: { name } }) => !own.has(name))) {
      const { parameters = [] } = document.paths[`/api/v1${definition.path}`]!.post!;
      const key = parameters.find(({ name }) => name.toLowerCase() === 'idempotency-key');
      expect(key, definition.name).toMatchObject({ required: true });
    }
  });
});

describe('the page of the API', () => {
  it.each(USE_CASES.map(({ definition }) => definition))(
    'shows for $name an example that its own schema takes',
    ({ input }) => {
      expect(Compile(input).Errors(exampleOf(input))).toEqual([]);
    },
  );

  it('shows each operation with whom it is for and the line that asks it', async () => {
    const answer = await shop.server.inject('/api/v1/');
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
    for (const { operationId, path } of operations()) {
      const article = answer.body.split(`<article id="${operationId}">`)[1]?.split('</article>')[0];
      expect(article, operationId).toContain(`curl &#34;$SHOP${path.replace(/\{id\}/g, 'ID')}`);
      expect(article, operationId).toMatch(/Permission [a-z]+\.[a-z]+: owner|For anyone|signed in\./);
    }
    expect(answer.body).toContain('Permission wire.receive: owner, winder.');
    expect(answer.body).not.toContain('undefined');
  });

  it('may wear its style and run no script', async () => {
    const page = await shop.server.inject('/api/v1');
    expect(page.body).not.toMatch(/<script|style=/);
    const style = await shop.server.inject('/api/v1/page.css');
    expect(style.headers['content-type']).toBe('text/css; charset=utf-8');
  });
});

/** What a JSON Pointer in a reference leads to. */
const at = (whole: unknown, ref: string): unknown =>
  ref
    .split('/')
    .slice(1)
    .map((step) => decodeURIComponent(step).replaceAll('~1', '/').replaceAll('~0', '~'))
    .reduce<unknown>((inner, step) => (inner as Record<string, unknown> | undefined)?.[step], whole);
