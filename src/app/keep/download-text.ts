import { download } from './download.ts';

/** Hands a text to the browser as a file to save. */
export const downloadText = (name: string, text: string, page?: Parameters<typeof download>[2]): void =>
  download(name, new Blob([text], { type: 'application/json' }), page);
