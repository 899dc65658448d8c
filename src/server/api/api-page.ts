import { ALLOWED, HTTP_FAULTS, type Permission, WORKSHOP_FAULTS } from '../../contract/index.js';
import { statusOf } from '../statuses.js';
import { escaped } from './escaped.js';
import { exampleOf } from './example.js';

/** As much of an OpenAPI document as the page shows. */
export interface ApiDocument {
  readonly info: { readonly version: string };
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
}

interface Operation {
  readonly operationId: string;
  readonly summary?: string;
  readonly tags?: readonly string[];
  readonly security?: readonly unknown[];
  readonly parameters?: readonly {
    readonly name: string;
    readonly in: string;
    readonly required?: boolean;
    readonly description?: string;
  }[];
  readonly requestBody?: {
    readonly content: { readonly 'application/json': { readonly schema: never } };
  };
  readonly 'x-permission'?: Permission;
}

interface Shown extends Operation {
  readonly method: string;
  readonly path: string;
}

/** A page that tells people what can be asked, made from the document: each operation with whom it is for, an example of
 * what to send, and the line that sends it. Plain HTML, without a script. */
export function apiPage(document: ApiDocument): string {
  const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      ...operation,
      method: method.toUpperCase(),
      path,
    })),
  );
  const tags = [...new Set(operations.map(tagOf))].sort();
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>The API of this shop</title>
<link rel="stylesheet" href="/api/v1/page.css">
<h1>The API of this shop</h1>
${opening(document.info.version)}
<nav aria-label="Parts">${tags.map((tag) => `<a href="#${tag}">${escaped(tag)}</a>`).join(' ')} <a href="#problems">problems</a></nav>
${tags
  .map((tag) =>
    partOf(
      tag,
      operations.filter((one) => tagOf(one) === tag),
    ),
  )
  .join('\n')}
${problems()}
</html>
`;
}

const opening = (version: string): string => `
<p>Tautwork ${escaped(version)}. The same for programs: <a href="/api/v1/openapi.json">openapi.json</a> (OpenAPI 3.1).</p>
<p>Everything is JSON. Lengths are metres, weights kilograms, times UTC with milliseconds; the ledger counts whole milligrams,
millimetres and pieces. Before the lines below work in a shell, tell it where the shop is, your token, and how a UUID is made:</p>
<pre>SHOP=http://localhost:4870
TOKEN=twk_...
uuid() { uuidgen 2&gt;/dev/null || cat /proc/sys/kernel/random/uuid; }</pre>
<p>A token is made by whoever keeps the people: sign in, and ask <a href="#make-token">make-token</a> with the cookie and the
<code>Origin</code> of a page of the shop:</p>
<pre>curl "$SHOP/api/v1/sign-in" --cookie-jar jar --json '{"name":"Owner","password":"..."}'
curl "$SHOP/api/v1/tokens/make" --cookie jar -H "Origin: $SHOP" -H "Idempotency-Key: $(uuid)" \\
  --json '{"id":"'$(uuid)'","personId":"...","name":"a script","scopes":["stock.read"]}'</pre>
<p>Ids are UUIDs that you make for what you write. Every write also needs an <code>Idempotency-Key</code>, a UUID for that
request: sent again with the same key it is done once, and gets the same answer. A record has a version; a change names the
version that you saw, as <code>expectedVersion</code> or as <code>If-Match</code>, and is refused where someone was quicker.
What is refused comes as <code>application/problem+json</code> with a <code>code</code>, and in <code>detail</code> what is wrong and
how to mend it.</p>`;

const tagOf = ({ tags }: Operation): string => tags?.[0] ?? 'other';

const partOf = (tag: string, operations: readonly Shown[]): string =>
  `<section id="${escaped(tag)}"><h2>${escaped(tag)}</h2>\n${operations.map(operationOf).join('\n')}\n</section>`;

function operationOf(operation: Shown): string {
  const { operationId, method, path, summary = '', parameters = [] } = operation;
  const shown = parameters.map(
    ({ name, in: place, required, description = '' }) =>
      `<li><code>${escaped(name)}</code> (${place}${required === true ? ', needed' : ''}) ${escaped(description)}</li>`,
  );
  return `<article id="${escaped(operationId)}">
<h3>${escaped(operationId)} <code>${method} ${escaped(path)}</code></h3>
<p>${escaped(summary)} <span>${escaped(whomFor(operation))}</span></p>
${shown.length > 0 ? `<ul>${shown.join('')}</ul>` : ''}
<pre>${escaped(curlLine(operation))}</pre>
</article>`;
}

function whomFor({ security, 'x-permission': permission }: Operation): string {
  if (permission !== undefined) return `Permission ${permission}: ${ALLOWED[permission].join(', ')}.`;
  return security?.length === 0 ? 'For anyone.' : 'For everyone who is signed in.';
}

/** The line for a shell that sends an example. */
export function curlLine({ method, path, parameters = [], requestBody, security }: Shown): string {
  const needed = parameters.filter((one) => one.in === 'query' && one.required === true);
  const query = needed.map(({ name }) => `${name}=${name.toUpperCase()}`).join('&');
  const address = `$SHOP${path.replace(/\{(\w+)\}/g, (_all, name: string) => name.toUpperCase())}`;
  const hasKey = parameters.some(({ name }) => name.toLowerCase() === 'idempotency-key');
  return [
    `curl "${address}${query === '' ? '' : `?${query}`}"`,
    ...(security?.length === 0 ? [] : ['-H "Authorization: Bearer $TOKEN"']),
    ...(hasKey ? ['-H "Idempotency-Key: $(uuid)"'] : []),
    ...(requestBody ? [`--json '${exampleText(requestBody)}'`] : method === 'POST' ? ['-X POST'] : []),
  ].join(' \\\n  ');
}

/** A quotation mark inside would end the shell's text. */
const exampleText = ({ content }: NonNullable<Operation['requestBody']>): string =>
  JSON.stringify(exampleOf(content['application/json'].schema)).replaceAll("'", '’');

function problems(): string {
  const codes = Object.keys({ ...HTTP_FAULTS, ...WORKSHOP_FAULTS }).sort();
  const rows = codes.map(
    (code) => `<tr id="${code}"><td><code>${code}</code></td><td>${statusOf(code)}</td></tr>`,
  );
  return `<section id="problems"><h2>problems</h2>
<table><thead><tr><th>code</th><th>status</th></tr></thead><tbody>${rows.join('\n')}</tbody></table></section>`;
}
