import { cutWords } from '../../fitting/cut-long.ts';
import type { StrutCut } from '../../session/fit-up/as-fitted.ts';
import { shown } from '../parts/show.ts';
import { useUnits } from '../parts/use-units.ts';

const NAMES = { port: 'Port strut', starboard: 'Starboard strut', single: 'Single strut' } as const;

/** Lengths to cut, from what was really drilled, with how far they may be off. */
export function StrutLengths({ cuts }: { readonly cuts: readonly StrutCut[] | undefined }) {
  const units = useUnits();
  const mm = (value: number): string => shown(value, 'mm', units);
  return (
    <section className="fit-up-section" aria-label="Struts to cut">
      <h3 className="type-section">Struts to cut</h3>
      {cuts === undefined && <p className="type-small">Working it out.</p>}
      {cuts?.map(({ side, length, why, planned }) => (
        <p key={side} className="type-text" data-cut={side} data-value={length?.value ?? ''}>
          <strong>{NAMES[side]}</strong>{' '}
          {length === undefined
            ? `No answer. ${why ?? ''}`
            : `${mm(length.value)} ± ${mm(length.give)}${
                planned === undefined || Math.abs(planned - length.value) < 0.05
                  ? ', as planned'
                  : `, planned ${mm(planned)}`
              }. Cut ${cutWords(length.long, units)} long, at ${cutWords(length.value + length.long, units)}, try it, trim.`}
        </p>
      ))}
      <p className="type-small base-soft">
        ± is twice the standard uncertainty of the readings behind it. What you cut longer by is the most that
        they can be wrong together. The tube itself, held from pin to pin, comes first.
      </p>
    </section>
  );
}
