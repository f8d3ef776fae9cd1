/** How large a plan may grow. Edits and the opening of files keep to the same caps, so what can be made can be opened. */
export const CAPS = {
  /** Bytes of a plan file, UTF-8. */
  file: 2_000_000,
  /** Rows over all lists of the file. */
  rows: 2_000,
  /** Characters of any text: a note, a formula, what was typed. */
  text: 4_096,
  /** Characters of any name: title, scenario, cell, label. */
  name: 64,
} as const;
