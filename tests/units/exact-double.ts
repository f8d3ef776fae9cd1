/** The exact value of a finite double as over / 2^1074, from its bits and not from its digits. */
export const exactDouble = (value: number): bigint => {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const exponent = (bits >> 52n) & 0x7ffn;
  const digits = bits & 0xf_ffff_ffff_ffffn;
  const size = exponent === 0n ? digits : (digits | (1n << 52n)) << (exponent - 1n);
  return bits >> 63n === 1n ? -size : size;
};

const neighbour = (value: number, by: bigint): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  view.setBigUint64(0, view.getBigUint64(0) + by);
  return view.getFloat64(0);
};

/** Whether no double is nearer to over/under than `value` is; meant for values other than 0. */
export const isNearestDouble = (value: number, over: bigint, under: bigint): boolean => {
  const target = over << 1074n;
  const distance = (candidate: number): bigint => {
    const off = exactDouble(candidate) * under - target;
    return off < 0n ? -off : off;
  };
  const own = distance(value);
  return [neighbour(value, 1n), neighbour(value, -1n)]
    .filter(Number.isFinite)
    .every((other) => own <= distance(other));
};
