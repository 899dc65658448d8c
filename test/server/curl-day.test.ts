import { execFile, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { TOKEN_SCOPES } from '../../src/contract/index.js';
import { newId, packageRoot } from '../../src/workshop/index.js';

/* A day's work with nothing but curl and the page of the API: the program runs in a process of its own, as people start it. */

const folder = mkdtempSync(join(tmpdir(), 'tautwork-curl-'));
const jar = join(folder, 'cookies');
const program = new URL('bin/tautwork.mjs', packageRoot()).pathname;
const serving = spawn(process.execPath, [program, 'serve', '--db', join(folder, 'shop.db'), '--port', '0']);
const stopped = new Promise<number | null>((resolve) => serving.once('exit', resolve));

let address = '';
let link = '';
let token = '';

beforeAll(async () => {
  serving.stderr.pipe(process.stderr);
  for await (const line of createInterface({ input: serving.stdout })) {
    address ||= /open at (http:\S+)\/ /.exec(line)?.[1] ?? '';
    link ||= /first-sign-in#(\S+)$/.exec(line)?.[1] ?? '';
    if (address !== '' && link !== '') break;
  }
});
afterAll(async () => {
  serving.kill('SIGKILL');
  await stopped;
  rmSync(folder, { recursive: true, force: true });
});

type Json = Readonly<Record<string, unknown>>;

/** Runs curl and reads its answer; the status stands on the last line. */
async function curl(
  path: string,
  ...words: string[]
): Promise<{ readonly status: number; readonly body: Json }> {
  const { stdout } = await promisify(execFile)('curl', [
    `${address}/api/v1${path}`,
    ...['--silent', '--show-error', '--write-out', '\n%{http_code}'],
    ...words,
  ]);
  const [status, ...lines] = stdout.split('\n').reverse();
  return { status: Number(status), body: JSON.parse(lines.reverse().join('\n')) as Json };
}

const withToken = () => ['--header', `Authorization: Bearer ${token}`];

/** Does a use case and gives its answer. */
async function does(path: string, input: object, ...words: string[]): Promise<Json> {
  const key = `Idempotency-Key: ${newId()}`;
  const { status, body } = await curl(
    path,
    ...withToken(),
    ...['--header', key, '--json', JSON.stringify(input)],
    ...words,
  );
  expect(status, `${path}: ${JSON.stringify(body)}`).toBe(200);
  return body;
}

async function reads(path: string): Promise<Json> {
  const { status, body } = await curl(path, ...withToken());
  expect(status, JSON.stringify(body)).toBe(200);
  return body;
}

const TEN_THOU_M = 0.000254;
const spec = { gaugeThou: 10, kind: 'plain', material: 'plain-steel', end: 'ball', lengthM: 1 };
const ids = Object.fromEntries(
  ['wire', 'bench', 'bin', 'recipe', 'set', 'settings', 'spool', 'run', 'lot', 'trial'].map((what) => [
    what,
    newId(),
  ]),
) as Readonly<Record<string, string>>;
const version = (record: unknown) => (record as { readonly version: number }).version;

describe('with curl alone', () => {
  it('the owner signs in by the link on the console, and makes a token for the rest', async () => {
    expect((await curl('/balances')).status).toBe(401);
    const password = 'a crooked brass pitch';
    const signedIn = await curl(
      '/set-password',
      '--cookie-jar',
      jar,
      '--json',
      JSON.stringify({ link, password }),
    );
    expect(signedIn.status, JSON.stringify(signedIn.body)).toBe(200);
    const { id: personId } = signedIn.body.person as { readonly id: string };
    const wish = { id: newId(), personId, name: 'a day with curl', scopes: TOKEN_SCOPES };
    const made = await curl(
      '/tokens/make',
      ...['--cookie', jar, '--header', `Origin: ${address}`, '--header', `Idempotency-Key: ${newId()}`],
      ...['--json', JSON.stringify(wish)],
    );
    expect(made.status, JSON.stringify(made.body)).toBe(200);
    token = made.body.secret as string;
    expect(token).toMatch(/^twk_/);
  });

  it('the shop is set up: wire, bench, bin, recipe, set, rules', async () => {
    const wire = {
      use: 'core',
      shape: 'round',
      sizeM: TEN_THOU_M,
      alloy: 'music-wire',
      strengthTable: 'astm-a228',
    };
    await does('/wires/save', { id: ids.wire, body: { name: 'round 10', ...wire, priceMinorPerKg: 1500 } });
    await does('/machines/save', {
      id: ids.bench,
      body: {
        kind: 'bench',
        name: 'Cutting bench',
        positions: 1,
        longestStringM: 1.5,
        gaugesThou: { least: 7, most: 30 },
        loadSeconds: 8,
        unloadSeconds: 4,
        minutesPerDay: 450,
        changeMinutes: { base: 2, core: 3, wrap: 0, alloy: 0, length: 2 },
        changeScrap: { base: 0, core: 1, wrap: 0, alloy: 0 },
      },
    });
    await does('/bins/save', { id: ids.bin, body: { name: 'A 1', walkOrder: 1, reorderLevel: 0 } });
    const plainWire = { sizeM: TEN_THOU_M, alloy: 'music-wire', strengthTable: 'astm-a228', shape: 'round' };
    await does('/recipes/save', {
      id: ids.recipe,
      body: {
        name: 'plain 10',
        gaugeThou: 10,
        material: 'plain-steel',
        construction: { kind: 'plain', wire: plainWire },
        coreWireId: ids.wire,
        wrapWireIds: [],
        note: '',
      },
    });
    await does('/recipes/step', { id: ids.recipe, expectedVersion: 1, step: 'try', note: '' });
    await does('/recipes/step', { id: ids.recipe, expectedVersion: 2, step: 'calibrate', note: '' });
    await does('/sets/save', { id: ids.set, body: { name: 'Two tens', strings: [spec, spec] } });
    await does('/settings/save', {
      id: ids.settings,
      body: {
        name: 'Invented for this test',
        invented: true,
        rules: {
          lotSize: 12,
          stressLimit: 0.8,
          plainUpToThou: 19,
          thickestPlainThou: 20,
          thinnestWoundThou: 20,
          standardLengthM: 1,
          longLengthM: 1.25,
          standardScaleUpToM: 0.67,
          dayStartsAtMinute: 450,
          workingDays: [1, 2, 3, 4, 5],
        },
        rates: {
          currency: 'XTS',
          minorDigits: 2,
          labourMinorPerHour: 2400,
          overheadShare: 0.45,
          endMinorEach: { ball: 2, loop: 1 },
          packMinorPerSet: 34,
          packMinutesPerSet: 1.5,
          runScrapShare: 0.02,
        },
      },
    });
  });

  it('a spool is received', async () => {
    const spool = await does('/spools/receive', {
      id: ids.spool,
      wireId: ids.wire,
      name: 'S-1',
      lot: 'melt 7',
      grossKg: 1.2,
      tareKg: 0.2,
    });
    expect(spool).toMatchObject({ id: ids.spool, state: 'on-shelf', version: 1 });
    const { items } = await reads(`/balances?account=spool/${ids.spool}`);
    expect(items).toContainEqual(expect.objectContaining({ unit: 'mg', quantity: 1_000_000 }));
  });

  it('a run is planned, started, measured and closed', async () => {
    const plan = { name: 'R-1', recipeId: ids.recipe, machineId: ids.bench, spec, quantity: 6 };
    expect(await does('/runs/plan', { id: ids.run, ...plan })).toMatchObject({ state: 'planned' });
    const started = await does(
      '/runs/start',
      { runId: ids.run, spoolIds: [ids.spool] },
      ...['--header', 'If-Match: "1"'],
    );
    expect(started).toMatchObject({ state: 'running', version: 2 });
    await does('/runs/trial-strings', { id: ids.trial, runId: ids.run, number: 1, position: 1 });
    const row = { runId: ids.run, trialStringId: ids.trial, instrument: 'micrometer 2' };
    const rows = [TEN_THOU_M, 0.000255, 0.000253].map((value) => ({
      id: newId(),
      ...row,
      quantity: 'diameter',
      value,
    }));
    expect(await does('/runs/measurements', { rows })).toEqual({ written: 3 });
    const measured = await reads(`/measurements?runId=${ids.run}`);
    expect((measured.items as readonly { value: number }[]).map(({ value }) => value).sort()).toEqual([
      0.000253, 0.000254, 0.000255,
    ]);
    const closed = await does('/runs/close', {
      runId: ids.run,
      expectedVersion: version(await reads(`/runs/${ids.run}`)),
      lotId: ids.lot,
      lotName: 'L-1',
      binId: ids.bin,
      good: 6,
      scrap: [{ reason: 'kinked', count: 1 }],
      spools: [{ spoolId: ids.spool, grossKg: 1.197 }],
    });
    expect(closed).toMatchObject({ run: { state: 'closed' }, lot: { state: 'in-check' } });
    const lot = { lotId: ids.lot, expectedVersion: version(closed.lot), reason: 'measured and found good' };
    expect(await does('/lots/release', lot)).toMatchObject({ state: 'released' });
  });

  it('an order is imported, picked, sealed and shipped', async () => {
    const csv = 'order,player,quantity,due,set\nT-1,Jorla Barleycroft,1,2031-03-05,Two tens\n';
    const imported = await does('/orders/import', { source: 'by hand', csv, commit: true });
    expect(imported).toMatchObject({
      committed: true,
      preview: { faults: [], orders: [{ outcome: 'new' }] },
    });
    const [order] = (await reads('/orders?number=T-1')).items as readonly { id: string; version: number }[];
    const opened = await does('/packs/open', { orderId: order!.id, expectedVersion: order!.version });
    let [pack] = opened.packs as readonly { id: string; version: number }[];
    for (const position of [1, 2]) {
      pack = (await does('/packs/pick', {
        packId: pack!.id,
        expectedVersion: pack!.version,
        position,
        lotId: ids.lot,
        binId: ids.bin,
      })) as unknown as { id: string; version: number };
    }
    const sealed = await does('/packs/seal', { packId: pack!.id, expectedVersion: pack!.version });
    expect(sealed).toMatchObject({ state: 'sealed' });
    const shipped = await does('/orders/ship', {
      orderId: order!.id,
      expectedVersion: version(await reads(`/orders/${order!.id}`)),
      partial: false,
    });
    expect(shipped).toMatchObject({ order: { state: 'shipped' }, shipped: [{ state: 'shipped' }] });
    const { items } = await reads(`/balances?accountPrefix=bin/`);
    expect(items).toEqual([expect.objectContaining({ account: `bin/${ids.bin}`, quantity: 4 })]);
  });

  it('the journal knows who did it all', async () => {
    const { items } = await reads('/journal?limit=500');
    const entries = items as readonly { useCase: string; by: string }[];
    expect(entries.at(0)).toMatchObject({ useCase: 'ship-order', by: expect.stringMatching(/^token\//) });
    expect(entries.map(({ useCase }) => useCase)).toContain('receive-spool');
    expect(JSON.stringify(items)).not.toContain(token);
  });

  it('the server stops when told to, with nothing amiss', async () => {
    serving.kill('SIGTERM');
    expect(await stopped).toBe(0);
  });
});
