import { describe } from 'vitest';
import { everyPlace } from './every-place.ts';
import { DESK, openPages } from './page.ts';

const open = openPages();

describe('every place of the page, at 1440 px', () => everyPlace(open, DESK));
