import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { SYSTEM, type System, writeBeside } from '../../src/cli/write-beside.ts';
import { command } from '../support/command.ts';

const folder = mkdtempSync(join(tmpdir(), 'sternmount-beside-'));
const out = join(folder, 'sheet.pdf');
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(() => writeFileSync(out, 'the old sheet'));

const fault = (code: string) => (): never => {
  throw Object.assign(new Error(code), { code });
};

/** A disk that is full after the first bytes. */
const fullDisk: System = {
  ...SYSTEM,
  writeFileSync: ((at: number, content: string) => {
    SYSTEM.writeFileSync(at, content.slice(0, 3));
    fault('ENOSPC')();
  }) as System['writeFileSync'],
};

describe('a file that is written', () => {
  it('takes the old one’s place whole', () => {
    writeBeside(out, 'the new sheet');
    expect(readFileSync(out, 'utf8')).toBe('the new sheet');
    expect(readdirSync(folder)).toEqual(['sheet.pdf']);
  });

  it.each([
    ['a full disk', fullDisk],
    ['a fault while it is made safe', { ...SYSTEM, fsyncSync: fault('EIO') }],
    ['a fault as it takes its place', { ...SYSTEM, renameSync: fault('EACCES') }],
  ])('leaves the old one after %s, and nothing beside it', (_, system) => {
    expect(() => writeBeside(out, 'the new sheet', system)).toThrow();
    expect(readFileSync(out, 'utf8')).toBe('the old sheet');
    expect(readdirSync(folder)).toEqual(['sheet.pdf']);
  });

  it('leaves the old one until the new one is whole, should the run be stopped', () => {
    let seen = '';
    writeBeside(out, 'the new sheet', {
      ...SYSTEM,
      renameSync: (from, to) => {
        seen = readFileSync(out, 'utf8');
        expect(readFileSync(from, 'utf8')).toBe('the new sheet');
        SYSTEM.renameSync(from, to);
      },
    });
    expect(seen).toBe('the old sheet');
  });

  it('stays behind a name that only points at it', () => {
    const pointing = join(folder, 'latest.pdf');
    symlinkSync(out, pointing);
    writeBeside(pointing, 'the new sheet');
    expect(readFileSync(out, 'utf8')).toBe('the new sheet');
    rmSync(pointing);
  });
});

describe('print tells apart', () => {
  const print = (file: string) => command('print', ['--sheet', 'survey', '--out', file]);

  it.runIf(process.platform === 'linux')('a full disk', async () => {
    const { code, out: said, err } = await print('/dev/full');
    expect([code, said]).toEqual([2, '']);
    expect(err).toBe('The file /dev/full cannot be written: the disk is full.\n');
  });

  it('no folder', async () => {
    const file = join(folder, 'no', 'x.pdf');
    expect((await print(file)).err).toBe(`The file ${file} cannot be written: there is no such folder.\n`);
  });

  it('a folder in the file’s place', async () => {
    mkdirSync(join(folder, 'x.pdf'));
    expect((await print(join(folder, 'x.pdf'))).err).toContain('cannot be written: it is a folder.');
  });

  // The system closes nothing to who runs it all.
  it.skipIf(process.getuid?.() === 0)('a closed folder', async () => {
    const closed = join(folder, 'closed');
    mkdirSync(closed, { mode: 0o500 });
    expect((await print(join(closed, 'x.pdf'))).err).toContain('its folder is closed to you.');
  });
});
