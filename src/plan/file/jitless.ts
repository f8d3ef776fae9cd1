import { config } from 'zod/mini';

// Code generation is switched off before the first schema is made: a strict content policy would report the attempt.
config({ jitless: true });
