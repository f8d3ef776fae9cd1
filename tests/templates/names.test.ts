import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { namesModule } from '../../src/cli/names-module.ts';
import { cellNamed, inputNamed, limitNamed, resultNamed } from '../../src/plan/book.ts';
import { tableNamed } from '../../src/plan/tables.ts';

describe('the names that code asks for', () => {
  it('are those of the templates', () => {
    const written = readFileSync(new URL('../../src/plan/names.ts', import.meta.url), 'utf8');
    expect(written).toBe(namesModule());
  });

  it('do not compile when misspelt', () => {
    // @ts-expect-error
    expect(cellNamed('rudder_gapp')).toBeUndefined();
    // @ts-expect-error
    expect(inputNamed('shaft_x')).toBeUndefined();
    // @ts-expect-error
    expect(resultNamed('shim_count')).toBeUndefined();
    // @ts-expect-error
    expect(limitNamed('standoff')).toBeUndefined();
    // @ts-expect-error
    expect(tableNamed('rows')).toBeUndefined();
  });

  it('may be any string where only the running program knows them', () => {
    const own: string = 'my_own_cell';
    expect(cellNamed(own)).toBeUndefined();
  });
});
