import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));

/** Whether the page is built with the grid, whose free key is for personal use only. */
const withGrid = process.env.STERNMOUNT_GRID !== 'off';

export default defineConfig({
  root: path('./src'),
  cacheDir: path('./node_modules/.vite'),
  plugins: [react()],
  define: { __WITH_GRID__: JSON.stringify(withGrid) },
  build: {
    outDir: path('./dist'),
    emptyOutDir: true,
    target: 'es2023',
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'engine', test: /node_modules[\\/](hyperformula|chevrotain|@chevrotain)[\\/]/ },
            { name: 'grid', test: /node_modules[\\/]handsontable[\\/]/ },
            {
              name: 'chart',
              test: /node_modules[\\/](recharts|@reduxjs|immer|decimal\.js-light|d3-[a-z]+|victory-vendor)[\\/]/,
            },
          ],
        },
      },
    },
  },
  test: {
    projects: [
      {
        extends: true,
        root: path('./'),
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          maxWorkers: 2,
          // Loading the modules anew for each of some two hundred files took as long as the tests.
          isolate: false,
          setupFiles: ['src/cli/sound-compiler.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        root: path('./'),
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          testTimeout: 60_000,
          expect: { poll: { timeout: 15_000, interval: 30 } },
          hookTimeout: 60_000,
          // After the others, two files at a time.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
