import { build } from 'vite';

// The page without the grid, for a yard: the grid's free key is for personal use only.
process.env.STERNMOUNT_GRID = 'off';
await build({ logLevel: 'info' });
