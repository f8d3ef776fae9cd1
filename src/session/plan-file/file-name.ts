const LONGEST = 60;

/** The name of a plan's file: its title in small letters, digits and -, so that every system takes it. */
export function fileNameOf(title: string): string {
  const plain = title
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return `${plain === '' ? 'plan' : plain}.plan.json`;
}
