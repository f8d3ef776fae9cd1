import { sureness } from './bench/sureness.ts';
console.log(sureness());
