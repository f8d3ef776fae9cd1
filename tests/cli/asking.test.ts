import { execFileSync, spawn } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isPattern } from '../../src/cli/plan-files.ts';
import { CAPS } from '../../src/plan/caps.ts';
import { command } from '../support/command.ts';

const START = 'demo-data/start.plan.json';
const folder = mkdtempSync(join(tmpdir(), 'sternmount-asking-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string): string => join(folder, name);

copyFileSync(START, file('b.plan.json'));
copyFileSync(START, file('a.plan.json'));
copyFileSync(START, file('.hidden.plan.json'));
writeFileSync(file('c.plan.json'), '{"kind": "no plan"}');
writeFileSync(file('notes.txt'), 'nothing');
mkdirSync(file('d.plan.json'));

const lines = (out: string) =>
  out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

describe('--help', () => {
  it.each([
    ['evaluate', [], ['--plan FILE', '--batch']],
    ['evaluate', ['--foo', 'bar'], ['--set name=value']],
    ['print', [], ['--sheet NAME', '--out FILE']],
    ['study', [], ['sweep, map', '--fineness NUMBER', '--free NAME']],
    ['study', ['map'], ['study -- map', '--across NAME']],
  ] as const)('answers on %s %s', async (name, args, says) => {
    const { code, out, err } = await command(name, [...args, '--help']);
    expect([code, err]).toEqual([0, '']);
    for (const text of says) expect(out).toContain(text);
  });
});

describe('an unknown option', () => {
  it.each([
    [
      'evaluate',
      ['--foo'],
      'Unknown option --foo. Options: --plan FILE, --scenario NAME, --set name=value, --json, --batch (and --help answers).',
    ],
    ['evaluate', ['--foo=3'], 'Unknown option --foo. Options:'],
    ['evaluate', ['shim_count=3'], '“shim_count=3” is not an option. Options:'],
    ['study', ['odds', '--points', '3'], 'Unknown option --points. Options: --share NUMBER'],
    ['print', ['--json'], 'Unknown option --json. Options: --sheet NAME'],
    ['evaluate', ['--json=yes'], '--json takes no value.'],
  ] as const)('of %s %s is refused with the known ones', async (name, args, says) => {
    const { code, out, err } = await command(name, args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });
});

describe('a pattern of plans', () => {
  it('is answered in one line a plan, in the order of the names, the refused ones with their reason', async () => {
    const { code, out, err } = await command('evaluate', ['--plan', file('*.plan.json')]);
    expect(code).toBe(2);
    expect(err).toBe('Of 4 plans 2 were refused; their lines say why.\n');
    const [a, b, c, d, ...others] = lines(out);
    expect(others).toEqual([]);
    const alone = await command('evaluate', ['--plan', START, '--json']);
    expect(a).toEqual({ file: file('a.plan.json'), ...JSON.parse(alone.out) });
    expect(b).toEqual({ ...a, file: file('b.plan.json') });
    expect(c).toEqual({ file: file('c.plan.json'), error: expect.stringContaining('not a plan') });
    expect(d).toEqual({ file: file('d.plan.json'), error: expect.stringContaining('it is a folder') });
  });

  it('whose plans are all answered ends well', async () => {
    const { code, out, err } = await command('evaluate', [
      '--plan',
      file('?.plan.json').replace('?', '[ab]'),
      '--json',
    ]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('no such file');
    const both = await command('evaluate', ['--plan', 'demo-data/start*.json', '--set', 'shim_count=3']);
    expect([both.code, both.err]).toEqual([0, '']);
    expect(lines(both.out)[0]).toMatchObject({ file: START, least_room: expect.anything() });
  });

  it('is taken by studies too, and by neither a batch nor a sheet', async () => {
    const asked = ['--input', 'shim_count', '--limit', 'rudder_gap'];
    const study = await command('study', ['turning', ...asked, '--plan', file('a*.json')]);
    expect(study.code).toBe(0);
    expect(lines(study.out)).toMatchObject([{ file: file('a.plan.json'), study: 'turning', answer: {} }]);
    const batch = await command('evaluate', ['--batch', '--plan', file('*.plan.json')]);
    expect([batch.code, batch.out]).toEqual([2, '']);
    const sheet = await command('print', [
      '--sheet',
      'job',
      '--out',
      file('x.pdf'),
      '--plan',
      file('*.plan.json'),
    ]);
    expect([sheet.code, sheet.err]).toEqual([
      2,
      'A sheet is printed from one plan: --plan takes no pattern here.\n',
    ]);
  });

  it('that nothing is like is refused, and a file of that very name is a file', async () => {
    const { code, err } = await command('evaluate', ['--plan', file('*.nothing')]);
    expect([code, err]).toEqual([2, `There is no plan like ${file('*.nothing')}.\n`]);
    copyFileSync(START, file('star*.json'));
    expect(isPattern(file('star*.json'))).toBe(false);
  });
});

describe('a plan that is read', () => {
  it('tells a folder, a missing file and a file that is too large apart, the size before it is read', async () => {
    const big = file('big.json');
    writeFileSync(big, '');
    const said = async (name: string) => (await command('evaluate', ['--plan', name])).err;
    expect(await said(folder)).toContain('cannot be read: it is a folder.');
    expect(await said(file('none.json'))).toContain('cannot be read: there is no such file.');
    // A hole of a terabyte takes no room on the disk, and would take all of the machine's memory.
    execFileSync('truncate', ['-s', '1T', big]);
    expect(await said(big)).toContain(`a plan has ${CAPS.file} bytes at most`);
  });

  it.runIf(process.platform === 'linux')(
    'is read from a device no further than a plan can be large',
    async () => {
      const { code, err } = await command('evaluate', ['--plan', '/dev/zero']);
      expect(code).toBe(2);
      expect(err).toContain(`a plan has ${CAPS.file} bytes at most`);
    },
  );
});

describe('a standard output that takes no more', () => {
  it.runIf(process.platform === 'linux')(
    'ends in one sentence; the plan may come through a pipe',
    async () => {
      const evaluate = `"${process.execPath}" --import tsx src/cli/evaluate.ts --plan /dev/stdin --json`;
      const child = spawn('sh', ['-c', `cat ${START} | ${evaluate} > /dev/full`]);
      let said = '';
      child.stderr.setEncoding('utf8').on('data', (text: string) => {
        said += text;
      });
      const code = await new Promise((done) => child.on('close', done));
      expect([code, said]).toEqual([
        1,
        'The answer cannot be written to standard output: the disk is full.\n',
      ]);
    },
  );
});
