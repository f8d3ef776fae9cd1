/** An answer as JSON takes it: columns as lists, and null where there is no number. */
export function plain(_: string, value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? value : null;
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) return Array.from(value as Float64Array);
  return value instanceof Map ? Object.fromEntries(value) : value;
}
