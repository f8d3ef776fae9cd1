import type { Table, TableFunction } from '../record.ts';
import type { Profile } from '../transom/profile.ts';
import { inBoat, lieArguments } from './lie.ts';
import { zeroArgument } from './plumb.ts';

/** Rows closer in height than this are one reading taken twice, mm. */
const SAME = 1e-6;

/** Rows that follow each other at one height, as their mean. */
function joined(rows: readonly { readonly x: number; readonly z: number }[]): Profile {
  const groups: { z: number; xs: number[] }[] = [];
  for (const { x, z } of rows) {
    const last = groups.at(-1);
    if (last !== undefined && z - last.z < SAME) last.xs.push(x);
    else groups.push({ z, xs: [x] });
  }
  return groups.map(({ z, xs }) => [z, xs.reduce((sum, x) => sum + x, 0) / xs.length]);
}

/**
 * The measured centreline of the face in the boat's own axes, rows of (height, x) in mm with heights rising: empty
 * with fewer than three heights, and when it is not to be followed.
 */
export function faceProfile(
  follow: boolean,
  rows: Table,
  zero: number,
  lineAft: number,
  trim: number,
  list: number,
): Profile {
  if (!follow) return [];
  const places = rows
    .map((row) => inBoat({ aft: lineAft - (row[1] ?? 0), up: (row[0] ?? 0) + zero }, { trim, list }))
    .sort((a, b) => a.z - b.z);
  const profile = joined(places);
  return profile.length < 3 ? [] : profile;
}

export const faceProfileRecord = {
  id: 'FACE_PROFILE',
  title: 'The measured face',
  arguments: [
    { name: 'follow', unit: '–', meaning: 'Whether the measured face is followed', type: 'flag' },
    { name: 'readings', unit: 'mm', meaning: 'The readings of the transom', type: 'table' },
    zeroArgument,
    { name: 'line_aft', unit: 'mm', meaning: 'The plumb line, aft of the waterline mark' },
    ...lieArguments,
  ],
  formula:
    'each reading as height and distance aft of the waterline mark, turned back by trim and list, in order of height; nothing when it is not followed',
  source: 'rotation of axes',
  run: faceProfile,
} as const satisfies TableFunction;
