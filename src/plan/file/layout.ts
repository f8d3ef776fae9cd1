/** Widest line, the same as the formatter's, so that a file kept in a repository stays as it was written. */
const WIDEST = 110;

const STEP = '  ';

/** A value on one line, with a space wherever one reads better. */
function flat(value: unknown): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(flat).join(', ')}]`;
  const parts = Object.entries(value).map(([key, it]) => `${JSON.stringify(key)}: ${flat(it)}`);
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`;
}

/** A list's entries or an object's fields, each on a line of its own between brackets. */
const spread = (open: string, parts: readonly string[], close: string, indent: string): string =>
  `${open}\n${parts.map((part) => indent + STEP + part).join(',\n')}\n${indent}${close}`;

function fields(value: object, indent: string): string {
  const parts = Object.entries(value).map(([key, it]) => {
    const start = `${JSON.stringify(key)}: `;
    return start + laid(it, indent + STEP, start.length);
  });
  return spread('{', parts, '}', indent);
}

/** A value that starts `before` characters after its indent, on one line if that fits. */
function laid(value: unknown, indent: string, before: number): string {
  const line = flat(value);
  if (value === null || typeof value !== 'object' || indent.length + before + line.length + 1 <= WIDEST)
    return line;
  return Array.isArray(value)
    ? spread(
        '[',
        value.map((it) => laid(it, indent + STEP, 0)),
        ']',
        indent,
      )
    : fields(value, indent);
}

/** A document as JSON with one row to a line where it fits: short enough to read, and a change shows as one line. */
export const layout = (document: object): string => `${fields(document, '')}\n`;
