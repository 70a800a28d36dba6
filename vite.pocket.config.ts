import { defineConfig } from 'vite';

/** The pocket page's code as one plain script, which the server puts into the single file together with its data. */
export default defineConfig({
	root: 'web/pocket',
	build: {
		// Beside the page's own folder, which every build of the page empties.
		outDir: '../dist-pocket',
		emptyOutDir: true,
		target: 'es2022',
		lib: { entry: 'main.ts', formats: ['iife'], name: 'pocket', fileName: () => 'pocket.js' },
		reportCompressedSize: false,
	},
});
