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

/** The fits among the errors, each once, that follow a law; their tables' short names and degrees of freedom. */
function fitsBy(law: NamedLaw, errors: readonly ReadingError[], words: Words) {
  const found = new Map<string, number>();
  for (const error of errors) {
    if (error.fit !== undefined && lawOf(error) === law) found.set(error.fit.of, error.fit.freedom ?? 0);
  }
  const names = [...found.keys()].map((of) => `the ${words.cell(of).short}`);
  return { names: listed(names), freedoms: listed([...found.values()].map(String)), count: found.size };
}

/** How many readings may be off, and by which law each. */
export function lawsSentence(errors: readonly ReadingError[], words: Words): string {
  const single = errors.filter((it) => it.fit === undefined);
  const count = (law: NamedLaw): number => single.filter((it) => lawOf(it) === law).length;
  const says: string[] = [];
  const [even, bell] = [count('even'), count('bell')];
  if (even > 0) says.push(`${many(even, 'reading is', 'readings are')} spread evenly across their ±`);
  if (bell > 0)
    says.push(`${many(bell, 'reading is', 'readings are')} bell-shaped, with a standard deviation as ±`);
  const told = fitsBy('student', errors, words);
  if (told.count > 0) {
    const [is, its] = told.count === 1 ? ['is', 'its'] : ['are', 'their'];
    const freedom = told.freedoms === '1' ? 'degree' : 'degrees';
    says.push(
      `${told.names} ${is} as far off as the scatter of ${its} rows says (Student’s t, ${told.freedoms} ${freedom} of freedom)`,
    );
  }
  const untold = fitsBy('bell', errors, words);
  if (untold.count > 0) {
    const [is, its] = untold.count === 1 ? ['is', 'its'] : ['are', 'their'];
    says.push(`${untold.names} ${is} bell-shaped, by the ± of ${its} rows, whose scatter tells nothing`);
  }
  return says.length === 0 ? 'No reading may be off.' : `How each may be off: ${says.join('; ')}.`;
}
