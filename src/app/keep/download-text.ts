interface Page {
  readonly document: Pick<Document, 'createElement' | 'body'>;
  readonly URL: Pick<typeof URL, 'createObjectURL' | 'revokeObjectURL'>;
  readonly setTimeout: (run: () => void, milliseconds: number) => unknown;
}

/** Milliseconds after which the text's address is given back; some browsers are slow to start on it. */
const LATER = 60_000;

/** Hands a text to the browser as a file to save. Whether the person saved it cannot be known. */
export function downloadText(name: string, text: string, page: Page = globalThis): void {
  const address = page.URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = page.document.createElement('a');
  link.href = address;
  link.download = name;
  page.document.body.append(link);
  link.click();
  link.remove();
  page.setTimeout(() => page.URL.revokeObjectURL(address), LATER);
}
