import { type Answer, NoAnswer } from '../answer.ts';
import { record, type Table } from '../record.ts';
import { weightsOf } from './line.ts';

/** Sagitta of a circle of curvature k over a half chord, in the form that keeps its digits. */
export const sagitta = (k: number, half: number): number =>
  (k * half * half) / (1 + Math.sqrt(1 - (k * half) ** 2));

/** Its derivative by the curvature. */
export const bySagitta = (k: number, half: number): number => {
  const root = Math.sqrt(1 - (k * half) ** 2);
  return (half * half) / (root * (1 + root));
};

const ROUNDS = 60;
/** A face flatter than this, 1/mm, is called flat: 0.005 mm over a metre. */
const FLAT = 1e-8;

/**
 * Camber radius, mm, from gaps under a straightedge at half chords out from where it touches: least squares over the
 * rows by Gauss's method on the curvature. 0 for a flat face.
 */
export function surveyCamber(rows: Table): Answer {
  const weights = weightsOf(rows);
  const used = rows
    .map((row, i) => ({ half: Math.abs(row[0] ?? 0), gap: row[1] ?? 0, weight: weights[i] ?? 1 }))
    .filter((it) => it.half > 0);
  if (used.length === 0) return new NoAnswer('The camber needs a row with a distance out and a gap.');
  const widest = Math.max(...used.map((it) => it.half));
  const most = (1 - 1e-9) / widest;
  let k = 0;
  for (let round = 0; round < ROUNDS; round++) {
    let [up, down] = [0, 0];
    for (const { half, gap, weight } of used) {
      const by = bySagitta(k, half);
      up += weight * by * (gap - sagitta(k, half));
      down += weight * by * by;
    }
    const next = Math.max(-most, Math.min(most, k + up / down));
    const moved = Math.abs(next - k);
    k = next;
    if (moved <= 1e-15 * most) break;
  }
  if (k < -FLAT) {
    return new NoAnswer(
      'The gaps say that the face is hollow across; the camber is for a face that bulges aft.',
    );
  }
  if (k >= most) return new NoAnswer('A gap is larger than its distance out: no circle has that shape.');
  return k <= FLAT ? 0 : 1 / k;
}

export const surveyCamberRecord = record({
  id: 'SURVEY_CAMBER',
  title: 'Camber radius from a straightedge',
  arguments: [
    {
      name: 'gaps',
      unit: 'mm',
      meaning: 'The gaps: distance out from where the straightedge touches, and gap there',
      type: 'table',
    },
  ],
  unit: 'mm',
  formula: 'the radius whose sagittas R − √(R² − distance²) fit the gaps by least squares; 0 when flat',
  source: 'sagitta of a circular arc; least squares',
  example: {
    given: [[[300, 18.0652708018288]]],
    answer: 2500,
    tolerance: 1e-6,
    source: 'sagitta of a 600 mm chord on R 2500, closed form',
  },
  run: surveyCamber,
});
