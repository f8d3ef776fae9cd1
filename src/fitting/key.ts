/** A name as a plan file keeps it: small letters, digits and _. */
export const keyOf = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '_');
