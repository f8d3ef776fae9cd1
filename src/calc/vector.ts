/** A point or direction in boat axes, mm: x aft, y to starboard, z up. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const scaled = (a: Vector, k: number): Vector => ({ x: a.x * k, y: a.y * k, z: a.z * k });
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const length = (a: Vector): number => Math.sqrt(dot(a, a));

/** The direction of `a` with length 1; a zero vector stays zero. */
export const unit = (a: Vector): Vector => scaled(a, 1 / (length(a) || 1));
