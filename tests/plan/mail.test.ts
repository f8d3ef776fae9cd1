import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../src/plan/caution.ts';
import { mailLink } from '../../src/plan/mail.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';

/** Takes a link apart as RFC 6068 says: fields after ?, set apart by &, each percent-encoded; a plus is a plus. */
function parsed(link: string): { to: string; fields: Map<string, string> } {
  const found = /^mailto:([^?]*)\?(.*)$/.exec(link);
  if (found === null) throw new Error(`no mailto link: ${link}`);
  const fields = (found[2] ?? '').split('&').map((field) => {
    const [name = '', value = '', ...more] = field.split('=');
    if (more.length > 0) throw new Error(`a bare = in ${field}`);
    return [decodeURIComponent(name), decodeURIComponent(value)] as const;
  });
  return { to: decodeURIComponent(found[1] ?? ''), fields: new Map(fields) };
}

const bodyLines = (link: string): string[] => (parsed(link).fields.get('body') ?? '').split('\r\n');

const planned = (title: string, scenario: string | null = null): Plan => ({
  ...newPlan('x'),
  title,
  scenarios: scenario === null ? [] : [{ name: scenario, overrides: new Map() }],
  active: scenario,
});

/** RFC 6068 with RFC 3986: unreserved, percent-encoded, and the few delimiters a field may have bare. */
const ALLOWED = /^mailto:\?(?:[A-Za-z0-9\-._~!$()*+,;:@&=]|%[0-9A-F]{2})*$/;

describe('a summary as a mail link', () => {
  it('parses back to the subject and the lines', () => {
    const lines = ['Rudder gap: 44.7 mm, past by 5.3 mm', 'Bolts & skin: 95 % + a bit = near; why? #1'];
    const { to, fields } = parsed(mailLink(planned('Reverse transom', 'Three shims'), lines));
    expect(to).toBe('');
    expect([...fields.keys()]).toEqual(['subject', 'body']);
    expect(fields.get('subject')).toBe('Reverse transom');
    expect(fields.get('body')).toBe(
      ['Plan: Reverse transom', 'Scenario: Three shims', '', ...lines, '', CAUTION].join('\r\n'),
    );
  });

  it('says when the base values are meant', () => {
    expect(bodyLines(mailLink(planned('Boat'), []))[1]).toBe('Scenario: base values');
  });

  it('keeps line breaks and control characters out of the subject and of each line', () => {
    const { fields } = parsed(
      mailLink(planned('a\r\nBcc: x@example.org\u0000\u007F b'), ['one\r\ntwo\u2028three']),
    );
    expect(fields.get('subject')).toBe('a Bcc: x@example.org b');
    expect([...fields.keys()]).toEqual(['subject', 'body']);
    expect((fields.get('body') ?? '').split('\r\n')[3]).toBe('one two three');
  });

  it('cuts at whole lines, and says how many it left out', () => {
    const lines = Array.from({ length: 60 }, (_, i) => `Limit ${i + 1}: 12.5 mm, near`);
    const link = mailLink(planned('Boat', 'A'), lines);
    const body = bodyLines(link);
    const kept = body.filter((line) => line.startsWith('Limit '));
    expect(kept).toEqual(lines.slice(0, kept.length));
    expect(kept.length).toBeGreaterThan(10);
    expect(body).toContain(
      `${60 - kept.length} of 60 lines did not fit in this message; the plan file has them all.`,
    );
    expect(body.at(-1)).toBe(CAUTION);
    expect(link.length).toBeLessThanOrEqual(1_500);
    // One more line would not have fitted.
    const line = `%0D%0A${encodeURIComponent(lines[kept.length] ?? '')}`;
    expect(link.length + line.length).toBeGreaterThan(1_500);
  });

  it('says nothing of cutting when all fits', () => {
    expect(mailLink(planned('Boat'), ['one'])).not.toContain('did%20not%20fit');
  });

  it('stays within 1,500 characters and the allowed ones, whatever it is given', () => {
    const text = (maxLength: number) => fc.string({ unit: 'binary', maxLength });
    fc.assert(
      fc.property(
        text(64),
        fc.option(text(64)),
        fc.array(text(300), { maxLength: 40 }),
        (title, scenario, lines) => {
          const link = mailLink(planned(title, scenario), lines);
          expect(link.length).toBeLessThanOrEqual(1_500);
          expect(link).toMatch(ALLOWED);
          expect(parsed(link).fields.get('subject')).not.toMatch(/\p{Cc}/u);
          expect(bodyLines(link).at(-1)).toBe(CAUTION);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('fits with the longest names there can be', () => {
    for (const sign of ['漢', '🙂', 'é', "'", 'a']) {
      const name = sign.repeat(Math.floor(64 / sign.length));
      const link = mailLink(planned(name, name), [name.repeat(60)]);
      expect(link.length).toBeLessThanOrEqual(1_500);
      const subject = parsed(link).fields.get('subject') ?? '';
      expect(name.startsWith(subject.replace('…', ''))).toBe(true);
      expect(subject.length).toBeGreaterThan(15);
    }
  });
});
