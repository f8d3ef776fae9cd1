const PER_DEGREE = Math.PI / 180;

/** Degrees to radians. */
export const radians = (degrees: number): number => degrees * PER_DEGREE;

/** Radians to degrees. */
export const degrees = (radians: number): number => radians / PER_DEGREE;

export const sin = (angle: number): number => Math.sin(angle * PER_DEGREE);
export const cos = (angle: number): number => Math.cos(angle * PER_DEGREE);
export const tan = (angle: number): number => Math.tan(angle * PER_DEGREE);
