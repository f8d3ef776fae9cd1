const WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'there is no such folder',
  EISDIR: 'it is a folder',
  EACCES: 'it is closed to you',
  EPERM: 'it is closed to you',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'the disk takes no file so large',
  EMFILE: 'too many files are open',
  EIO: 'the disk reports a fault',
};

const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';

/** What the system said of a file, in words; `instead` says what a code means here. */
export function systemFault(error: unknown, instead: Readonly<Record<string, string>> = {}): string {
  const code = codeOf(error);
  const known = instead[code] ?? WORDS[code];
  if (known !== undefined) return known;
  return error instanceof Error ? error.message.replace(/\.$/, '') : String(error);
}
