import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { sheetStyle } from '../paper/src/sheet/style.ts';
import { offlineCopy } from './vite-offline.ts';
import { ownStyle } from './vite-sheet.ts';

const page = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

export default defineConfig({
  plugins: [react(), ownStyle(sheetStyle), offlineCopy()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    outDir: 'dist',
    // Fonts and pictures stay files: a strict content policy has no room for data: addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { input: { index: page('index.html'), print: page('print.html') } },
  },
});
