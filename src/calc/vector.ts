/** A point or direction in boat axes, mm: x aft, y to starboard, z up. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const scaled = (a: Vector, k: number): Vector => ({ x: a.x * k, y: a.y * k, z: a.z * k });
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
