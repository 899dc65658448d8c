import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Compile } from 'typebox/compile';
import { afterAll, describe, expect, it } from 'vitest';
import { DaySchema } from '../../src/contract/index.js';
import type { Day } from '../../src/core/day/index.js';
import { demoFile, packageRoot } from '../../src/workshop/index.js';

const folder = mkdtempSync(join(tmpdir(), 'tautwork-cli-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The command as a person runs it: the compiled program in a process of its own. */
function tautwork(...words: string[]) {
  const program = new URL('bin/tautwork.mjs', packageRoot()).pathname;
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    cwd: folder,
  });
  return { status, stdout, stderr };
}

const faulty = demoFile('faulty-orders.csv').pathname;

describe('tautwork day', () => {
  it('works the demo day out without being told anything', () => {
    const { status, stdout } = tautwork('day');
    expect(status).toBe(1);
    expect(stdout).toContain('Tarnfield Strings (an invented workshop)');
    expect(stdout).toMatch(/400 lines: \d+ turned into strings, \d+ with faults\./);
    for (const part of [
      'Machines today',
      'Plan:',
      'Late',
      'Wire to pull for today',
      'Packing roll',
      "Cost of today's runs",
    ])
      expect(stdout).toContain(part);
  });

  it('prints JSON of the published schema', () => {
    const { stdout } = tautwork('day', '--json');
    const day: unknown = JSON.parse(stdout);
    expect(Compile(DaySchema).Errors(day)).toEqual([]);
    expect((day as Day).orders.length + new Set((day as Day).faults.map(({ line }) => line)).size).toBe(400);
  });

  it('writes every document to a folder, whole', () => {
    const out = join(folder, 'out');
    const { stdout } = tautwork('day', '--out', out);
    const files = [
      'day-plan.pdf',
      'day.json',
      'faults.csv',
      'labels.pdf',
      'packing-roll.pdf',
      'set-up-sheets.pdf',
    ];
    expect(readdirSync(out).sort()).toEqual(files);
    for (const name of files.filter((each) => each.endsWith('.pdf'))) {
      const bytes = readFileSync(join(out, name));
      expect(bytes.subarray(0, 5).toString(), name).toBe('%PDF-');
      expect(bytes.subarray(-6).toString(), name).toContain('%%EOF');
      expect(stdout).toContain(join(out, name));
    }
  });

  it('lists each bad line with file, line, column, what is wrong and the mend, and goes on with the good ones', () => {
    const { status, stdout } = tautwork('day', '--orders', faulty, '--date', '2027-03-01');
    expect(status).toBe(1);
    const faults = stdout.slice(stdout.indexOf('Faults:')).split('\n').slice(1);
    const lines = faults
      .filter((line) => line.startsWith(faulty))
      .map((line) => Number(/line (\d+)/.exec(line)?.[1]));
    // Lines 2 and 18 are good: every other has its own fault.
    expect(lines).toEqual(Array.from({ length: 15 }, (_, at) => at + 3));
    expect(stdout).toContain('17 lines: 2 turned into strings, 15 with faults.');
    expect(faults[0]).toContain(
      'line 3, column Qty: "two" cannot be read as a number of sets. Write a whole number',
    );
  });

  it('writes faults to a table whose cells no spreadsheet runs as a formula', () => {
    const orders = join(folder, 'formula.csv');
    writeFileSync(orders, 'order,quantity,due,set\n=1+1,1,2027-03-05,=cmd\n');
    tautwork('day', '--orders', orders, '--date', '2027-03-01', '--out', join(folder, 'formula'));
    const table = readFileSync(join(folder, 'formula', 'faults.csv'), 'utf8');
    expect(table).toContain("'=1+1");
    expect(table).not.toMatch(/(^|,)=/m);
  });

  it.each([
    [['--orders', 'nowhere.csv'], 'nowhere.csv: The file cannot be opened: there is no such file.'],
    [['--shop', 'nowhere.json'], 'nowhere.json: The file cannot be opened'],
    [['--date', '2027-02-30'], '--date "2027-02-30" is no day.'],
    [['--iterations', 'many'], '--iterations "many"'],
  ])('refuses %j and says why', (words, why) => {
    const { status, stdout, stderr } = tautwork('day', ...words);
    expect(status).toBe(2);
    expect(stderr).toContain(why);
    expect(stdout).toBe('');
  });

  it('says where a shop file is not one', () => {
    const shop = join(folder, 'shop.json');
    const good = JSON.parse(readFileSync(demoFile('shop.json'), 'utf8')) as {
      wires: object[];
      spools: { wireId: string }[];
      machines: object[];
    };
    writeFileSync(shop, JSON.stringify({ ...good, wires: [{ ...good.wires[0], sizeM: 'thick' }] }));
    expect(tautwork('day', '--shop', shop)).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('/wires/0/sizeM'),
    });
    writeFileSync(shop, JSON.stringify({ ...good, spools: [{ ...good.spools[0], wireId: 'unheard of' }] }));
    expect(tautwork('day', '--shop', shop).stderr).toContain('names the wire "unheard of"');
    writeFileSync(shop, JSON.stringify({ ...good, machines: [...good.machines, good.machines[0]] }));
    expect(tautwork('day', '--shop', shop)).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/the machine "\w+" is there twice/),
    });
    writeFileSync(shop, '{');
    expect(tautwork('day', '--shop', shop).stderr).toContain('not JSON');
  });

  it('on a day off says when work goes on, and nothing false of machines', () => {
    const { stdout } = tautwork('day', '--date', '2027-03-07');
    expect(stdout).toMatch(/No run starts today\. \d+ runs on later days, the first on Mon 8 Mar 2027\./);
    expect(stdout).not.toContain('100 %');
  });

  it('tells what players should hear', () => {
    const orders = join(folder, 'tell.csv');
    writeFileSync(
      orders,
      'order,player,quantity,due,material,scale,tuning,wishes\nA,Ama,1,2027-03-05,nickel-plated steel,25.5 in,E A D G B E,even 70 N\n',
    );
    const { stdout, status } = tautwork('day', '--orders', orders, '--date', '2027-03-01');
    expect(status).toBe(0);
    expect(stdout).toContain('1 line: 1 turned into strings, 0 with faults.');
    expect(stdout).toMatch(
      /To tell the players\n.*\n.*\nA +Ama +The tuning was written without octaves and read as E2 A2 D3 G3 B3 E4\./,
    );
  });

  it('takes absurd orders for what they are, one by one', () => {
    const orders = join(folder, 'absurd.csv');
    const rows = [
      'a;1;2027-03-05;E A D G B E;lighter bass 100 %;;10-13-17-26-36-46',
      'b;1;2027-03-05;E A D G B E;string 9 = 10;;10-13-17-26-36-46',
      'c;1;2027-03-05;E A D G B E;even 1 N;;',
      'd;1;2027-03-05;E;even 70 N;;',
      'e;10000;2027-03-05;;;Meadow six, 10;',
      'f;1;9999-12-31;;;Meadow six, 10;',
    ];
    writeFileSync(
      orders,
      `\ufeff${['order;quantity;due;tuning;wishes;set;likes;scale;material', ...rows.map((row, at) => `${row};25.5 in;${at < 4 ? 'nickel-plated steel' : ''}`)].join('\r\n')}`,
    );
    const { status, stdout } = tautwork('day', '--orders', orders, '--date', '2027-03-01');
    expect(status).toBe(1);
    expect(stdout).toContain('6 lines: 1 turned into strings, 5 with faults.');
  });

  it('warns of headings that it does not read', () => {
    const orders = join(folder, 'headings.csv');
    writeFileSync(orders, 'order,quantity,due,set,colour\nA,1,2027-03-05,"Meadow six, 10",red\n');
    const { stderr } = tautwork('day', '--orders', orders, '--date', '2027-03-01');
    expect(stderr).toContain('Not read, since their headings are not known: colour.');
  });
});

describe('tautwork set', () => {
  const ask = [
    'set',
    '--material',
    'nickel-plated steel',
    '--instrument',
    'electric 25.5',
    '--tuning',
    'D A D F# A D',
  ];

  it('answers open D for a player of tens with gauges, pulls and what lies on the shelf', () => {
    const { status, stdout } = tautwork(...ask, '--likes', '10-13-17-26-36-46');
    expect(status).toBe(0);
    expect(stdout).toContain('1. 11-15-18-26-36-51, nickel-plated steel');
    expect(stdout).toMatch(/All strings together pull \d+\.\d N/);
    expect(stdout).toContain('eyes away from them');
  });

  it('says which option it cannot read, and exits as refused', () => {
    const { status, stderr } = tautwork(...ask, '--likes', '10-13-17-26-36-0.46');
    expect(status).toBe(2);
    expect(stderr).toMatch(/--likes: .* can be read as .* or /);
  });

  it('says what would work where the answer is no', () => {
    const { status, stderr } = tautwork(
      ...ask.slice(0, 3),
      '--scale',
      '34 in',
      '--tuning',
      'E A D G B E',
      '--wishes',
      'even 60 N',
    );
    expect(status).toBe(3);
    expect(stderr).toMatch(/String 1 would break before it reaches E4 .* Tune it to /);
  });
});

describe('tautwork recipe and setup', () => {
  it('list the ways to make a gauge, and what is nearest where there is none', () => {
    expect(tautwork('recipe', '--gauge', '26', '--material', 'phosphor bronze').stdout).toMatch(
      /worth choosing from/,
    );
    const { status, stderr } = tautwork('recipe', '--gauge', '190', '--material', 'phosphor bronze');
    expect(status).toBe(3);
    expect(stderr).toMatch(/No core and wrap of the shop come within/);
    expect(tautwork('recipe', '--gauge', '.46', '--material', 'nickel').stderr).toContain('can be read as');
    expect(tautwork('recipe', '--gauge', '250', '--material', 'nickel').stderr).toContain(
      'Gauges run from 5 to 200 thousandths of an inch.',
    );
    expect(tautwork('recipe', '--gauge', '26', '--material', 'nickel', '--layers', '1.5').stderr).toContain(
      '--layers "1.5" is no whole number.',
    );
  });

  it('give a set-up with its cautions first, and no tension that nobody measured', () => {
    const { status, stdout } = tautwork('setup', '--recipe', 'phosphor-bronze 42', '--machine', 'old-heron');
    expect(status).toBe(0);
    expect(stdout.indexOf('Turning spindle')).toBeLessThan(stdout.indexOf('Wrap'));
    expect(stdout).toContain('dial ');
    expect(stdout).toContain('a guess: no run of this shop is near');
  });

  it('give the bench its short sheet: of a plain string, and of the cores of a wound one', () => {
    const plain = tautwork('setup', '--recipe', 'plain-steel 12', '--machine', 'bench', '--quantity', '40');
    expect(plain.status).toBe(0);
    expect(plain.stdout.indexOf('Pulling ends')).toBeLessThan(plain.stdout.indexOf('cut: '));
    expect(plain.stdout).toMatch(/twist: \d+ full turns/);
    expect(plain.stdout).toContain('common practice, no source');
    expect(plain.stdout).toContain(
      '59 good ones in a row show, with 95 % confidence, that at least 95 % hold',
    );
    const cores = tautwork('setup', '--recipe', 'phosphor-bronze 42', '--machine', 'bench');
    expect(cores.status).toBe(0);
    expect(cores.stdout).toMatch(/^Cores for recipe phosphor-bronze 42 at Cutting bench: 1 of /);
    expect(cores.stdout).not.toContain('Turning spindle');
  });

  it('say why a machine cannot', () => {
    const { status, stderr } = tautwork(
      'setup',
      '--recipe',
      'nickel-plated-steel 105',
      '--machine',
      'two-herons',
    );
    expect(status).toBe(3);
    expect(stderr).toContain('Two Herons (gearbox, two at once) makes gauges 20 to 58, not 105.');
  });
});

describe('the library', () => {
  it('is what package.json exports', () => {
    const { exports } = JSON.parse(readFileSync(new URL('package.json', packageRoot()), 'utf8')) as {
      exports: Record<string, { types: string; default: string }>;
    };
    const files = Object.values(exports).flatMap((entry) => [entry.types, entry.default]);
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) expect(existsSync(new URL(file, packageRoot())), file).toBe(true);
  });
});
