import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { keepBuiltFiles } from './scripts/machinery/keep-built-files.mjs';

export default defineConfig({
  root: 'src/web',
  plugins: [react(), keepBuiltFiles()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2023',
    // Nothing inline: the server lets a page run only scripts that are files of their own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      // The core and the contract do nothing on being loaded: a file of theirs that nobody uses stays out.
      treeshake: { moduleSideEffects: [{ test: /[/\\]src[/\\](core|contract)[/\\]/, sideEffects: false }] },
    },
  },
});
