/** Something that can be picked by what it is called. */
export interface Labelled {
  readonly name: string;
  readonly label: string;
}

const folded = (text: string): string => text.toLowerCase().replaceAll('’', "'");

/** Those whose label or name has every word typed in it, in their own order. */
export function filterLabels<L extends Labelled>(all: readonly L[], typed: string): readonly L[] {
  const words = folded(typed)
    .split(/\s+/)
    .filter((it) => it !== '');
  return all.filter(({ name, label }) => {
    const text = `${folded(label)} ${name}`;
    return words.every((word) => text.includes(word));
  });
}
