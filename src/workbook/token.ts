/** One piece of a formula. */
export interface Token {
  readonly kind: 'number' | 'text' | 'name' | 'call' | 'sign';
  readonly text: string;
}
