import type { Apart, Draw } from './apart.ts';

const given = (it: Draw): number[] => {
  const supply = it.between(500, 1000);
  const first = it.between(0.1, 1.02) * supply;
  const odd = it.one([-3, 0.4, 0]);
  const second = it.share() < 0.1 ? odd : it.between(0.1, 1.02) * supply;
  const pieces = it.share() < 0.3 ? [first] : [it.share() < 0.1 ? odd : first, second];
  return [supply, it.between(1.5, 4), ...pieces];
};

/** What is left of a tube after sawing the pieces off it one by one; null where one does not come off. */
function sawn(supply: number, kerf: number, pieces: readonly number[]): number | null {
  let left = supply;
  for (const piece of pieces) {
    if (piece > left || piece <= 0) return null;
    left = Math.max(0, left - piece - kerf);
  }
  return left;
}

function best(supply: number, kerf: number, pieces: readonly number[]): readonly number[] | null {
  const together = sawn(supply, kerf, pieces);
  if (together !== null) return [together];
  const apart = pieces.map((piece) => sawn(supply, kerf, [piece]));
  return apart.every((it) => it !== null) ? apart : null;
}

export const cutting: readonly Apart[] = [
  {
    id: 'TUBES_NEEDED',
    road: 'sawing the pieces off, both ways of sharing them out',
    draw: given,
    answer: (supply, kerf, ...pieces) => best(supply, kerf, pieces)?.length ?? null,
  },
  {
    id: 'STRUT_OFFCUT',
    road: 'sawing the pieces off, both ways of sharing them out',
    draw: given,
    answer: (supply, kerf, ...pieces) => {
      const left = best(supply, kerf, pieces);
      return left && Math.max(...left);
    },
  },
  {
    id: 'SHEET_AREA',
    road: 'the sheet, and the strips that the saw takes',
    draw: (it) => [it.whole(2, 8), it.between(60, 220), it.between(50, 180), it.between(1.5, 4)],
    answer: (count, width, height, kerf) =>
      count * (width * height + kerf * width + kerf * height + kerf ** 2),
  },
  {
    id: 'ROOM_ABOVE',
    road: 'a step from the bound to the value',
    draw: (it) => [it.between(-90, 90), it.between(-90, 90)],
    answer: (value, low) => -(low - value),
  },
  {
    id: 'ROOM_BELOW',
    road: 'a step from the value to the bound',
    draw: (it) => [it.between(-90, 90), it.between(-90, 90)],
    answer: (value, high) => -(value - high),
  },
  {
    id: 'ROOM_BETWEEN',
    road: 'half the span less the way from its middle',
    draw: (it) => [it.between(-90, 90), it.between(-90, -9), it.between(9, 90)],
    answer: (value, low, high) => (high - low) / 2 - Math.abs(value - (low + high) / 2),
  },
];
