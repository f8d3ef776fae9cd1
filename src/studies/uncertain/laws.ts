import { listed, type Words } from '../words.ts';
import type { ReadingError } from './reading-error.ts';

/** The law an error follows, as its sentence names it. */
export type NamedLaw = 'even' | 'bell' | 'student';

/** The law of a reading's error: a fit's is Student's where the scatter of its rows tells it, else it is normal. */
export function lawOf({ law, fit }: Pick<ReadingError, 'law' | 'fit'>): NamedLaw {
  if (fit !== undefined) return fit.freedom === null ? 'bell' : 'student';
  return law === 'normal' ? 'bell' : 'even';
}

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

/** What is fitted through the survey's tables, each once, by its table. */
const fitsAmong = (errors: readonly ReadingError[]): readonly (ReadingError & { readonly of: string })[] => {
  const found = new Map<string, ReadingError & { readonly of: string }>();
  for (const error of errors) {
    if (error.fit !== undefined && !found.has(error.fit.of))
      found.set(error.fit.of, { ...error, of: error.fit.of });
  }
  return [...found.values()];
};

/** How many readings may be off, and by which law each. */
export function lawsSentence(errors: readonly ReadingError[], words: Words): string {
  const single = errors.filter((it) => it.fit === undefined);
  const fits = fitsAmong(errors);
  const count = (law: NamedLaw): number => single.filter((it) => lawOf(it) === law).length;
  const says: string[] = [];
  const [even, bell] = [count('even'), count('bell')];
  if (even > 0) says.push(`${many(even, 'reading is', 'readings are')} spread evenly across their ±`);
  if (bell > 0)
    says.push(`${many(bell, 'reading is', 'readings are')} bell-shaped, with a standard deviation as ±`);
  for (const { of, fit } of fits) {
    const { short } = words.cell(of);
    const freedom = fit?.freedom ?? null;
    says.push(
      freedom === null
        ? `the ${short} is bell-shaped, by the ± of its rows, whose scatter tells nothing`
        : `the ${short} is as far off as the scatter of its rows says (Student’s t, ${many(freedom, 'degree', 'degrees')} of freedom)`,
    );
  }
  return says.length === 0 ? 'No reading may be off.' : `How each may be off: ${listed(says)}.`;
}
