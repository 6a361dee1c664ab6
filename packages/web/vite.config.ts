import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { offlineCopy } from './vite-offline.ts';
import { sheetStyle } from './vite-sheet.ts';

export default defineConfig({
  plugins: [react(), sheetStyle(), offlineCopy()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    outDir: 'dist',
    // Fonts and pictures stay files: a strict content policy has no room for data: addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
