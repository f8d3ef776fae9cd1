/**
 * A model of formulas alone, 30 inputs and 150 cells, as an owner might build it: sums, products, roots, angles, choices
 * and comparisons. Each cell is written twice, as the engine reads it and as TypeScript.
 */

export const INPUTS = 30;

const GROUPS = 15;

/** Ten cells over inputs `a` to `f` of a group; `p` is the group before's last. */
const CELLS: readonly string[] = [
  '={a} * {b} + {p}',
  '=SQRT({a} ^ 2 + {b} ^ 2 + 1)',
  '={0} / ({1} + 1) - {c} / 2',
  '=COS(RADIANS({d})) * {1} + SIN(RADIANS({d})) * {2}',
  '=IF({2} > {3}; {2} - {3}; {3} - {2})',
  '=MAX({0}; {1}; {4}) - MIN({1}; {4})',
  '=ABS({3} - {e}) * 0.25 + {5} * 0.75',
  '=IF(AND({a} > 1; {6} >= 0); {6} / ({1} + 2); {6} * 2)',
  '=({0} + {1} + {2} + {3}) / 4 - {7} * {f} / 100',
  '=({8} - {7}) / (ABS({8}) + ABS({7}) + 1)',
];

const inputName = (i: number): string => `input_${i}_x`;
const cellName = (i: number): string => `cell_${i}_x`;

/** Which inputs a group's letters stand for. */
const letters = (group: number): Readonly<Record<string, string>> =>
  Object.fromEntries([...'abcdef'].map((letter, k) => [letter, inputName((group * 2 + k * 5) % INPUTS)]));

/** The inputs' names, in order. */
export const formulaInputs = Array.from({ length: INPUTS }, (_, i) => inputName(i));

/** Every cell's formula by name, in order. */
export const formulaCells: ReadonlyMap<string, string> = new Map(
  Array.from({ length: GROUPS }, (_, group) =>
    CELLS.map((formula, k): [string, string] => {
      const names = letters(group);
      const before = group === 0 ? '0' : cellName(group * 10 - 1);
      const text = formula.replaceAll(/\{(\w)\}/g, (_, key: string) => {
        if (key === 'p') return before;
        return names[key] ?? cellName(group * 10 + Number(key));
      });
      return [cellName(group * 10 + k), text];
    }),
  ).flat(),
);

const PER_DEGREE = Math.PI / 180;

/** The same model as somebody would write it by hand: a row of inputs in, a row of answers out. */
export function plainFormulas(inputs: Float64Array, to: Float64Array): void {
  const i0 = inputs[0] as number;
  const i1 = inputs[1] as number;
  const i2 = inputs[2] as number;
  const i3 = inputs[3] as number;
  const i4 = inputs[4] as number;
  const i5 = inputs[5] as number;
  const i6 = inputs[6] as number;
  const i7 = inputs[7] as number;
  const i8 = inputs[8] as number;
  const i9 = inputs[9] as number;
  const i10 = inputs[10] as number;
  const i11 = inputs[11] as number;
  const i12 = inputs[12] as number;
  const i13 = inputs[13] as number;
  const i14 = inputs[14] as number;
  const i15 = inputs[15] as number;
  const i16 = inputs[16] as number;
  const i17 = inputs[17] as number;
  const i18 = inputs[18] as number;
  const i19 = inputs[19] as number;
  const i20 = inputs[20] as number;
  const i21 = inputs[21] as number;
  const i22 = inputs[22] as number;
  const i23 = inputs[23] as number;
  const i24 = inputs[24] as number;
  const i25 = inputs[25] as number;
  const i26 = inputs[26] as number;
  const i27 = inputs[27] as number;
  const i28 = inputs[28] as number;
  const i29 = inputs[29] as number;
  const c0 = i0 * i5 + 0;
  const c1 = Math.sqrt(i0 ** 2 + i5 ** 2 + 1);
  const c2 = c0 / (c1 + 1) - i10 / 2;
  const c3 = Math.cos(i15 * PER_DEGREE) * c1 + Math.sin(i15 * PER_DEGREE) * c2;
  const c4 = c2 > c3 ? c2 - c3 : c3 - c2;
  const c5 = Math.max(c0, c1, c4) - Math.min(c1, c4);
  const c6 = Math.abs(c3 - i20) * 0.25 + c5 * 0.75;
  const c7 = i0 > 1 && c6 >= 0 ? c6 / (c1 + 2) : c6 * 2;
  const c8 = (c0 + c1 + c2 + c3) / 4 - (c7 * i25) / 100;
  const c9 = (c8 - c7) / (Math.abs(c8) + Math.abs(c7) + 1);
  const c10 = i2 * i7 + c9;
  const c11 = Math.sqrt(i2 ** 2 + i7 ** 2 + 1);
  const c12 = c10 / (c11 + 1) - i12 / 2;
  const c13 = Math.cos(i17 * PER_DEGREE) * c11 + Math.sin(i17 * PER_DEGREE) * c12;
  const c14 = c12 > c13 ? c12 - c13 : c13 - c12;
  const c15 = Math.max(c10, c11, c14) - Math.min(c11, c14);
  const c16 = Math.abs(c13 - i22) * 0.25 + c15 * 0.75;
  const c17 = i2 > 1 && c16 >= 0 ? c16 / (c11 + 2) : c16 * 2;
  const c18 = (c10 + c11 + c12 + c13) / 4 - (c17 * i27) / 100;
  const c19 = (c18 - c17) / (Math.abs(c18) + Math.abs(c17) + 1);
  const c20 = i4 * i9 + c19;
  const c21 = Math.sqrt(i4 ** 2 + i9 ** 2 + 1);
  const c22 = c20 / (c21 + 1) - i14 / 2;
  const c23 = Math.cos(i19 * PER_DEGREE) * c21 + Math.sin(i19 * PER_DEGREE) * c22;
  const c24 = c22 > c23 ? c22 - c23 : c23 - c22;
  const c25 = Math.max(c20, c21, c24) - Math.min(c21, c24);
  const c26 = Math.abs(c23 - i24) * 0.25 + c25 * 0.75;
  const c27 = i4 > 1 && c26 >= 0 ? c26 / (c21 + 2) : c26 * 2;
  const c28 = (c20 + c21 + c22 + c23) / 4 - (c27 * i29) / 100;
  const c29 = (c28 - c27) / (Math.abs(c28) + Math.abs(c27) + 1);
  const c30 = i6 * i11 + c29;
  const c31 = Math.sqrt(i6 ** 2 + i11 ** 2 + 1);
  const c32 = c30 / (c31 + 1) - i16 / 2;
  const c33 = Math.cos(i21 * PER_DEGREE) * c31 + Math.sin(i21 * PER_DEGREE) * c32;
  const c34 = c32 > c33 ? c32 - c33 : c33 - c32;
  const c35 = Math.max(c30, c31, c34) - Math.min(c31, c34);
  const c36 = Math.abs(c33 - i26) * 0.25 + c35 * 0.75;
  const c37 = i6 > 1 && c36 >= 0 ? c36 / (c31 + 2) : c36 * 2;
  const c38 = (c30 + c31 + c32 + c33) / 4 - (c37 * i1) / 100;
  const c39 = (c38 - c37) / (Math.abs(c38) + Math.abs(c37) + 1);
  const c40 = i8 * i13 + c39;
  const c41 = Math.sqrt(i8 ** 2 + i13 ** 2 + 1);
  const c42 = c40 / (c41 + 1) - i18 / 2;
  const c43 = Math.cos(i23 * PER_DEGREE) * c41 + Math.sin(i23 * PER_DEGREE) * c42;
  const c44 = c42 > c43 ? c42 - c43 : c43 - c42;
  const c45 = Math.max(c40, c41, c44) - Math.min(c41, c44);
  const c46 = Math.abs(c43 - i28) * 0.25 + c45 * 0.75;
  const c47 = i8 > 1 && c46 >= 0 ? c46 / (c41 + 2) : c46 * 2;
  const c48 = (c40 + c41 + c42 + c43) / 4 - (c47 * i3) / 100;
  const c49 = (c48 - c47) / (Math.abs(c48) + Math.abs(c47) + 1);
  const c50 = i10 * i15 + c49;
  const c51 = Math.sqrt(i10 ** 2 + i15 ** 2 + 1);
  const c52 = c50 / (c51 + 1) - i20 / 2;
  const c53 = Math.cos(i25 * PER_DEGREE) * c51 + Math.sin(i25 * PER_DEGREE) * c52;
  const c54 = c52 > c53 ? c52 - c53 : c53 - c52;
  const c55 = Math.max(c50, c51, c54) - Math.min(c51, c54);
  const c56 = Math.abs(c53 - i0) * 0.25 + c55 * 0.75;
  const c57 = i10 > 1 && c56 >= 0 ? c56 / (c51 + 2) : c56 * 2;
  const c58 = (c50 + c51 + c52 + c53) / 4 - (c57 * i5) / 100;
  const c59 = (c58 - c57) / (Math.abs(c58) + Math.abs(c57) + 1);
  const c60 = i12 * i17 + c59;
  const c61 = Math.sqrt(i12 ** 2 + i17 ** 2 + 1);
  const c62 = c60 / (c61 + 1) - i22 / 2;
  const c63 = Math.cos(i27 * PER_DEGREE) * c61 + Math.sin(i27 * PER_DEGREE) * c62;
  const c64 = c62 > c63 ? c62 - c63 : c63 - c62;
  const c65 = Math.max(c60, c61, c64) - Math.min(c61, c64);
  const c66 = Math.abs(c63 - i2) * 0.25 + c65 * 0.75;
  const c67 = i12 > 1 && c66 >= 0 ? c66 / (c61 + 2) : c66 * 2;
  const c68 = (c60 + c61 + c62 + c63) / 4 - (c67 * i7) / 100;
  const c69 = (c68 - c67) / (Math.abs(c68) + Math.abs(c67) + 1);
  const c70 = i14 * i19 + c69;
  const c71 = Math.sqrt(i14 ** 2 + i19 ** 2 + 1);
  const c72 = c70 / (c71 + 1) - i24 / 2;
  const c73 = Math.cos(i29 * PER_DEGREE) * c71 + Math.sin(i29 * PER_DEGREE) * c72;
  const c74 = c72 > c73 ? c72 - c73 : c73 - c72;
  const c75 = Math.max(c70, c71, c74) - Math.min(c71, c74);
  const c76 = Math.abs(c73 - i4) * 0.25 + c75 * 0.75;
  const c77 = i14 > 1 && c76 >= 0 ? c76 / (c71 + 2) : c76 * 2;
  const c78 = (c70 + c71 + c72 + c73) / 4 - (c77 * i9) / 100;
  const c79 = (c78 - c77) / (Math.abs(c78) + Math.abs(c77) + 1);
  const c80 = i16 * i21 + c79;
  const c81 = Math.sqrt(i16 ** 2 + i21 ** 2 + 1);
  const c82 = c80 / (c81 + 1) - i26 / 2;
  const c83 = Math.cos(i1 * PER_DEGREE) * c81 + Math.sin(i1 * PER_DEGREE) * c82;
  const c84 = c82 > c83 ? c82 - c83 : c83 - c82;
  const c85 = Math.max(c80, c81, c84) - Math.min(c81, c84);
  const c86 = Math.abs(c83 - i6) * 0.25 + c85 * 0.75;
  const c87 = i16 > 1 && c86 >= 0 ? c86 / (c81 + 2) : c86 * 2;
  const c88 = (c80 + c81 + c82 + c83) / 4 - (c87 * i11) / 100;
  const c89 = (c88 - c87) / (Math.abs(c88) + Math.abs(c87) + 1);
  const c90 = i18 * i23 + c89;
  const c91 = Math.sqrt(i18 ** 2 + i23 ** 2 + 1);
  const c92 = c90 / (c91 + 1) - i28 / 2;
  const c93 = Math.cos(i3 * PER_DEGREE) * c91 + Math.sin(i3 * PER_DEGREE) * c92;
  const c94 = c92 > c93 ? c92 - c93 : c93 - c92;
  const c95 = Math.max(c90, c91, c94) - Math.min(c91, c94);
  const c96 = Math.abs(c93 - i8) * 0.25 + c95 * 0.75;
  const c97 = i18 > 1 && c96 >= 0 ? c96 / (c91 + 2) : c96 * 2;
  const c98 = (c90 + c91 + c92 + c93) / 4 - (c97 * i13) / 100;
  const c99 = (c98 - c97) / (Math.abs(c98) + Math.abs(c97) + 1);
  const c100 = i20 * i25 + c99;
  const c101 = Math.sqrt(i20 ** 2 + i25 ** 2 + 1);
  const c102 = c100 / (c101 + 1) - i0 / 2;
  const c103 = Math.cos(i5 * PER_DEGREE) * c101 + Math.sin(i5 * PER_DEGREE) * c102;
  const c104 = c102 > c103 ? c102 - c103 : c103 - c102;
  const c105 = Math.max(c100, c101, c104) - Math.min(c101, c104);
  const c106 = Math.abs(c103 - i10) * 0.25 + c105 * 0.75;
  const c107 = i20 > 1 && c106 >= 0 ? c106 / (c101 + 2) : c106 * 2;
  const c108 = (c100 + c101 + c102 + c103) / 4 - (c107 * i15) / 100;
  const c109 = (c108 - c107) / (Math.abs(c108) + Math.abs(c107) + 1);
  const c110 = i22 * i27 + c109;
  const c111 = Math.sqrt(i22 ** 2 + i27 ** 2 + 1);
  const c112 = c110 / (c111 + 1) - i2 / 2;
  const c113 = Math.cos(i7 * PER_DEGREE) * c111 + Math.sin(i7 * PER_DEGREE) * c112;
  const c114 = c112 > c113 ? c112 - c113 : c113 - c112;
  const c115 = Math.max(c110, c111, c114) - Math.min(c111, c114);
  const c116 = Math.abs(c113 - i12) * 0.25 + c115 * 0.75;
  const c117 = i22 > 1 && c116 >= 0 ? c116 / (c111 + 2) : c116 * 2;
  const c118 = (c110 + c111 + c112 + c113) / 4 - (c117 * i17) / 100;
  const c119 = (c118 - c117) / (Math.abs(c118) + Math.abs(c117) + 1);
  const c120 = i24 * i29 + c119;
  const c121 = Math.sqrt(i24 ** 2 + i29 ** 2 + 1);
  const c122 = c120 / (c121 + 1) - i4 / 2;
  const c123 = Math.cos(i9 * PER_DEGREE) * c121 + Math.sin(i9 * PER_DEGREE) * c122;
  const c124 = c122 > c123 ? c122 - c123 : c123 - c122;
  const c125 = Math.max(c120, c121, c124) - Math.min(c121, c124);
  const c126 = Math.abs(c123 - i14) * 0.25 + c125 * 0.75;
  const c127 = i24 > 1 && c126 >= 0 ? c126 / (c121 + 2) : c126 * 2;
  const c128 = (c120 + c121 + c122 + c123) / 4 - (c127 * i19) / 100;
  const c129 = (c128 - c127) / (Math.abs(c128) + Math.abs(c127) + 1);
  const c130 = i26 * i1 + c129;
  const c131 = Math.sqrt(i26 ** 2 + i1 ** 2 + 1);
  const c132 = c130 / (c131 + 1) - i6 / 2;
  const c133 = Math.cos(i11 * PER_DEGREE) * c131 + Math.sin(i11 * PER_DEGREE) * c132;
  const c134 = c132 > c133 ? c132 - c133 : c133 - c132;
  const c135 = Math.max(c130, c131, c134) - Math.min(c131, c134);
  const c136 = Math.abs(c133 - i16) * 0.25 + c135 * 0.75;
  const c137 = i26 > 1 && c136 >= 0 ? c136 / (c131 + 2) : c136 * 2;
  const c138 = (c130 + c131 + c132 + c133) / 4 - (c137 * i21) / 100;
  const c139 = (c138 - c137) / (Math.abs(c138) + Math.abs(c137) + 1);
  const c140 = i28 * i3 + c139;
  const c141 = Math.sqrt(i28 ** 2 + i3 ** 2 + 1);
  const c142 = c140 / (c141 + 1) - i8 / 2;
  const c143 = Math.cos(i13 * PER_DEGREE) * c141 + Math.sin(i13 * PER_DEGREE) * c142;
  const c144 = c142 > c143 ? c142 - c143 : c143 - c142;
  const c145 = Math.max(c140, c141, c144) - Math.min(c141, c144);
  const c146 = Math.abs(c143 - i18) * 0.25 + c145 * 0.75;
  const c147 = i28 > 1 && c146 >= 0 ? c146 / (c141 + 2) : c146 * 2;
  const c148 = (c140 + c141 + c142 + c143) / 4 - (c147 * i23) / 100;
  const c149 = (c148 - c147) / (Math.abs(c148) + Math.abs(c147) + 1);
  to[0] = c0;
  to[1] = c1;
  to[2] = c2;
  to[3] = c3;
  to[4] = c4;
  to[5] = c5;
  to[6] = c6;
  to[7] = c7;
  to[8] = c8;
  to[9] = c9;
  to[10] = c10;
  to[11] = c11;
  to[12] = c12;
  to[13] = c13;
  to[14] = c14;
  to[15] = c15;
  to[16] = c16;
  to[17] = c17;
  to[18] = c18;
  to[19] = c19;
  to[20] = c20;
  to[21] = c21;
  to[22] = c22;
  to[23] = c23;
  to[24] = c24;
  to[25] = c25;
  to[26] = c26;
  to[27] = c27;
  to[28] = c28;
  to[29] = c29;
  to[30] = c30;
  to[31] = c31;
  to[32] = c32;
  to[33] = c33;
  to[34] = c34;
  to[35] = c35;
  to[36] = c36;
  to[37] = c37;
  to[38] = c38;
  to[39] = c39;
  to[40] = c40;
  to[41] = c41;
  to[42] = c42;
  to[43] = c43;
  to[44] = c44;
  to[45] = c45;
  to[46] = c46;
  to[47] = c47;
  to[48] = c48;
  to[49] = c49;
  to[50] = c50;
  to[51] = c51;
  to[52] = c52;
  to[53] = c53;
  to[54] = c54;
  to[55] = c55;
  to[56] = c56;
  to[57] = c57;
  to[58] = c58;
  to[59] = c59;
  to[60] = c60;
  to[61] = c61;
  to[62] = c62;
  to[63] = c63;
  to[64] = c64;
  to[65] = c65;
  to[66] = c66;
  to[67] = c67;
  to[68] = c68;
  to[69] = c69;
  to[70] = c70;
  to[71] = c71;
  to[72] = c72;
  to[73] = c73;
  to[74] = c74;
  to[75] = c75;
  to[76] = c76;
  to[77] = c77;
  to[78] = c78;
  to[79] = c79;
  to[80] = c80;
  to[81] = c81;
  to[82] = c82;
  to[83] = c83;
  to[84] = c84;
  to[85] = c85;
  to[86] = c86;
  to[87] = c87;
  to[88] = c88;
  to[89] = c89;
  to[90] = c90;
  to[91] = c91;
  to[92] = c92;
  to[93] = c93;
  to[94] = c94;
  to[95] = c95;
  to[96] = c96;
  to[97] = c97;
  to[98] = c98;
  to[99] = c99;
  to[100] = c100;
  to[101] = c101;
  to[102] = c102;
  to[103] = c103;
  to[104] = c104;
  to[105] = c105;
  to[106] = c106;
  to[107] = c107;
  to[108] = c108;
  to[109] = c109;
  to[110] = c110;
  to[111] = c111;
  to[112] = c112;
  to[113] = c113;
  to[114] = c114;
  to[115] = c115;
  to[116] = c116;
  to[117] = c117;
  to[118] = c118;
  to[119] = c119;
  to[120] = c120;
  to[121] = c121;
  to[122] = c122;
  to[123] = c123;
  to[124] = c124;
  to[125] = c125;
  to[126] = c126;
  to[127] = c127;
  to[128] = c128;
  to[129] = c129;
  to[130] = c130;
  to[131] = c131;
  to[132] = c132;
  to[133] = c133;
  to[134] = c134;
  to[135] = c135;
  to[136] = c136;
  to[137] = c137;
  to[138] = c138;
  to[139] = c139;
  to[140] = c140;
  to[141] = c141;
  to[142] = c142;
  to[143] = c143;
  to[144] = c144;
  to[145] = c145;
  to[146] = c146;
  to[147] = c147;
  to[148] = c148;
  to[149] = c149;
}
