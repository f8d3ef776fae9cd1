import { tan } from '../angle.ts';
import type { Table } from '../record.ts';

/** A measured centreline of the transom: rows of (height, x) in mm, heights rising. Empty: the straight face. */
export type Profile = Table;

const height = (profile: Profile, i: number): number => profile[i]?.[0] ?? 0;
const across = (profile: Profile, i: number): number => profile[i]?.[1] ?? 0;

const segment = (profile: Profile, z: number): number => {
  let i = 0;
  while (i < profile.length - 2 && z >= height(profile, i + 1)) i++;
  return i;
};

/** Slope dx/dz of the centreline at height z; end segments run on. */
export function profileSlope(z: number, rake: number, profile: Profile): number {
  if (profile.length < 2) return tan(rake);
  const i = segment(profile, z);
  return (across(profile, i + 1) - across(profile, i)) / (height(profile, i + 1) - height(profile, i));
}

/** x of the centreline at height z, mm; end segments run on. */
export function profileX(z: number, rake: number, profile: Profile): number {
  if (profile.length < 2) return z * tan(rake);
  const i = segment(profile, z);
  return across(profile, i) + (z - height(profile, i)) * profileSlope(z, rake, profile);
}

/** Heights strictly between two others at which the centreline may bend. */
export const profileKnots = (profile: Profile, from: number, to: number): number[] =>
  profile.map((row) => row[0] ?? 0).filter((z) => z > from && z < to);

/** The optional last argument of every function that looks at the face. */
export const profileArgument = {
  name: 'profile',
  unit: 'mm',
  meaning: 'The measured profile, rows of height and x, empty for the straight face',
  type: 'table',
  default: [],
} as const;
