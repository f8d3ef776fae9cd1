import { existsSync, readdirSync } from 'node:fs';

/** Whether a file's name is a pattern of many: `*` stands for any letters, `?` for one. */
export const isPattern = (file: string): boolean => /[*?]/.test(file) && !existsSync(file);

const expressionOf = (part: string): RegExp =>
  new RegExp(
    `^${[...part]
      .map((it) => (it === '*' ? '[^/]*' : it === '?' ? '[^/]' : it.replace(/[\\^$.|+()[\]{}]/g, '\\$&')))
      .join('')}$`,
  );

/** Names in a folder that a part of a pattern stands for; hidden ones only where the part says so. */
function namesIn(folder: string, part: string): string[] {
  const expression = expressionOf(part);
  try {
    return readdirSync(folder === '' ? '.' : folder).filter(
      (name) => expression.test(name) && (part.startsWith('.') || !name.startsWith('.')),
    );
  } catch {
    return [];
  }
}

/** The files that a pattern stands for, in the order of their names. */
export function filesLike(pattern: string): readonly string[] {
  const [first = '', ...parts] = pattern.split('/');
  let found = first === '' ? ['/'] : [''];
  for (const part of first === '' ? parts : [first, ...parts]) {
    if (part === '') continue;
    found = found.flatMap((folder) => {
      const before = folder === '' || folder.endsWith('/') ? folder : `${folder}/`;
      if (/[*?]/.test(part)) return namesIn(folder, part).map((name) => `${before}${name}`);
      return existsSync(`${before}${part}`) ? [`${before}${part}`] : [];
    });
  }
  return found.sort();
}
