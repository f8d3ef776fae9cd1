import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { command, commandAsTyped } from '../support/command.ts';

const START = ['--plan', 'demo-data/start.plan.json'];

describe('a command run from its source, as its script runs it', () => {
  it.each([
    ['evaluate', [...START, '--json']],
    ['study', ['turning', ...START, '--input', 'shim_count', '--limit', 'rudder_gap', '--json']],
    ['print', [...START, '--sheet', 'nothing', '--out', 'nothing.pdf']],
  ] as const)('%s says what it says in here', async (name, args) => {
    const [typed, here] = await Promise.all([commandAsTyped(name, args), command(name, args)]);
    expect(typed).toEqual(here);
    expect(typed.code).toBe(name === 'print' ? 2 : 0);
  });

  it('has a script that runs it so', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      scripts: Record<string, string>;
    };
    for (const name of ['evaluate', 'study', 'print']) expect(scripts[name]).toBe(`tsx src/cli/${name}.ts`);
  });
});
