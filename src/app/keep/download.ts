interface Page {
  readonly document: Pick<Document, 'createElement' | 'body'>;
  readonly URL: Pick<typeof URL, 'createObjectURL' | 'revokeObjectURL'>;
  readonly setTimeout: (run: () => void, milliseconds: number) => unknown;
}

/** Milliseconds after which the file's address is given back; some browsers are slow to start on it. */
const LATER = 60_000;

/** Hands a file to the browser to save. Whether the person saved it cannot be known. */
export function download(name: string, content: Blob, page: Page = globalThis): void {
  const address = page.URL.createObjectURL(content);
  const link = page.document.createElement('a');
  link.href = address;
  link.download = name;
  page.document.body.append(link);
  link.click();
  link.remove();
  page.setTimeout(() => page.URL.revokeObjectURL(address), LATER);
}
