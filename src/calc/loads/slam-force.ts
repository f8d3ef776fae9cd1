/** Slamming coefficient of a smooth round cylinder: 5.15, DNV-RP-C205, from memory. */
const SLAM = 5.15;

/**
 * Force of a sea that strikes a tube broadside, N on each metre of it: ½·density·coefficient·diameter·speed², with the
 * diameter in mm and the speed of the water's surface in m/s.
 */
export const slamForce = (density: number, diameter: number, speed: number): number =>
  0.5 * density * SLAM * (diameter / 1000) * speed ** 2;
