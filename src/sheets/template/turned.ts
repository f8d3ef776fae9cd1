import type { Spot, TemplatePart } from '../../order/template/part.ts';

const turn = ({ x, y }: Spot): Spot => ({ x: -y, y: x });

/** A part turned a quarter to the left. */
export const turned = (part: TemplatePart): TemplatePart => ({
  ...part,
  outlines: part.outlines.map((spots) => spots.map(turn)),
  holes: part.holes.map((it) => ({ ...turn(it), diameter: it.diameter })),
  lines: part.lines.map(([from, to]) => [turn(from), turn(to)] as const),
  words: part.words.map((it) => ({ ...turn(it), text: it.text })),
});
