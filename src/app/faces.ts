import textLatin from '@fontsource/encode-sans/files/encode-sans-latin-400-normal.woff?url';
import strongLatin from '@fontsource/encode-sans/files/encode-sans-latin-600-normal.woff?url';
import textExt from '@fontsource/encode-sans/files/encode-sans-latin-ext-400-normal.woff?url';
import strongExt from '@fontsource/encode-sans/files/encode-sans-latin-ext-600-normal.woff?url';
import narrowLatin from '@fontsource/encode-sans-semi-condensed/files/encode-sans-semi-condensed-latin-400-normal.woff?url';
import figureLatin from '@fontsource/encode-sans-semi-condensed/files/encode-sans-semi-condensed-latin-500-normal.woff?url';
import narrowExt from '@fontsource/encode-sans-semi-condensed/files/encode-sans-semi-condensed-latin-ext-400-normal.woff?url';
import figureExt from '@fontsource/encode-sans-semi-condensed/files/encode-sans-semi-condensed-latin-ext-500-normal.woff?url';
import titleLatin from '@fontsource/encode-sans-semi-expanded/files/encode-sans-semi-expanded-latin-600-normal.woff?url';
import titleExt from '@fontsource/encode-sans-semi-expanded/files/encode-sans-semi-expanded-latin-ext-600-normal.woff?url';
import { Lettering, type LoadFace } from '../sheets/lettering/lettering.ts';
import type { Alphabet, Face } from '../sheets/lettering/styles.ts';

const addresses: Readonly<Record<Face, Readonly<Record<Alphabet, string>>>> = {
  text: { latin: textLatin, 'latin-ext': textExt },
  strong: { latin: strongLatin, 'latin-ext': strongExt },
  narrow: { latin: narrowLatin, 'latin-ext': narrowExt },
  figure: { latin: figureLatin, 'latin-ext': figureExt },
  title: { latin: titleLatin, 'latin-ext': titleExt },
};

const fetched: LoadFace = async (face, alphabet) => {
  const answer = await fetch(addresses[face][alphabet]);
  if (!answer.ok) throw new Error('The lettering for paper could not be read from this page.');
  return new Uint8Array(await answer.arrayBuffer());
};

let loading: Promise<Lettering> | undefined;

/** The lettering for paper, fetched once when it is first needed; a failure is tried again. */
export function loadLettering(): Promise<Lettering> {
  loading ??= Lettering.load(fetched).catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}
