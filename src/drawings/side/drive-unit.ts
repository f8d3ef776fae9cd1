import { type Part, shaftNeeds } from '../part.ts';
import { moved } from '../point.ts';
import { breakLine, polygon, polyline } from '../shapes.ts';
import { need } from '../values.ts';

/** Height of the drive unit shown above the tube, as a share of the overlap: the rest of it is broken off. */
const ABOVE = 0.6;

/** The drive unit as far as it concerns the mount: the length over the tube, and its foremost part. */
export const driveUnit: Part = {
  name: 'drive_overlap',
  needs: [...shaftNeeds, 'shaft_foot_height', 'shaft_length', 'drive_overlap', 'drive_forward', 'tube_od'],
  draw(values, { shaft }) {
    const got = need(
      values,
      'shaft_foot_height',
      'shaft_length',
      'drive_overlap',
      'drive_forward',
      'tube_od',
    );
    if (got === null || shaft === null) return [];
    const [foot, length, overlap, forward, od] = got;
    const { up, aft } = shaft;
    const top = moved(shaft.at(foot), up, length);
    const low = moved(top, up, -overlap);
    const high = moved(top, up, overlap * ABOVE);
    const behind = Math.max(od / 2 + 10, forward * 0.75);
    const [frontLow, frontHigh] = [moved(low, aft, -forward), moved(high, aft, -forward)];
    const [backLow, backHigh] = [moved(low, aft, behind), moved(high, aft, behind)];
    return [
      polygon('soft-fill', [frontLow, frontHigh, backHigh, backLow], this.name),
      polyline('outline', [frontHigh, frontLow, backLow, backHigh], this.name),
      breakLine(frontHigh, backHigh, 12, this.name),
      polyline(
        'hidden',
        [
          moved(low, aft, -od / 2),
          moved(top, aft, -od / 2),
          moved(top, aft, od / 2),
          moved(low, aft, od / 2),
        ],
        this.name,
      ),
    ];
  },
};
