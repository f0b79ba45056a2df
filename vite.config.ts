import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

// CommonJS, so nothing says that it may be left out where nobody solves an equation: the first load and the
// worker that nests pieces must not carry it.
const treeshake = { moduleSideEffects: [{ test: /node_modules\/odex\/|src\/calc\//, sideEffects: false }] };

/**
 * Nearly all of the first script is run before there is anything to see. A browser that knows this line compiles it
 * whole while it arrives, beside the page, where it would else stop at each function that is called for the first time.
 */
const compiledWhole: Plugin = {
  name: 'compiled-whole',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      for (const part of Object.values(bundle))
        if (part.type === 'chunk' && part.isEntry) part.code = `//# allFunctionsCalledOnLoad\n${part.code}`;
    },
  },
};

/** A script used by several screens goes into one with its folder's others: each file more is a request more. */
function roomOf(id: string): string | null {
  const [, place = ''] = /\/((?:src\/\w+|shared)\/.*)\/[^/]+$/.exec(id) ?? [];
  return place.split('/').slice(-1)[0] || null;
}

export default defineConfig({
  base: './',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: {
    target: 'es2022',
    // The page's policy allows no data: address for fonts and scripts, so nothing is written into the bundle.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      treeshake,
      // All that the first screen runs in one file: on a phone every further file is another question to the service
      // worker, and twenty of them take longer than all the script.
      output: {
        codeSplitting: {
          groups: [
            { name: 'first', tags: ['$initial'], priority: 2 },
            { name: roomOf, debugName: 'rooms', minShareCount: 2, priority: 1 },
          ],
        },
      },
    },
  },
  plugins: [
    compiledWhole,
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src/app/service-worker',
      filename: 'service-worker.ts',
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      injectManifest: {
        rollupFormat: 'iife',
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,txt,json,webmanifest}'],
        dontCacheBustURLsMatching: /^assets\//,
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
      },
      // In public/, and named by the page only once its first screen is seen.
      manifest: false,
    }),
  ],
});
