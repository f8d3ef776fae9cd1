import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { Lettering, type LoadFace } from '../sheets/lettering/lettering.ts';
import { faceFiles } from '../sheets/lettering/styles.ts';

const { resolve } = createRequire(import.meta.url);

/** A font file from the installed font package. */
const fromPackage: LoadFace = async (face, alphabet) => {
  const { family, weight } = faceFiles[face];
  return new Uint8Array(
    await readFile(resolve(`@fontsource/${family}/files/${family}-${alphabet}-${weight}-normal.woff`)),
  );
};

export const loadLettering = (): Promise<Lettering> => Lettering.load(fromPackage);
