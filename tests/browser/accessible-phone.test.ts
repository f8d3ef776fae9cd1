import { describe } from 'vitest';
import { everyPlace } from './every-place.ts';
import { openPages, PHONE } from './page.ts';

const open = openPages();

describe('every place of the page, at 390 px', () => everyPlace(open, PHONE));
