import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const server = process.env.DYELOT_SERVER ?? 'http://127.0.0.1:4310';

// Whoever builds, a test run too, gets the page that people use: with NODE_ENV set to anything else, React's much larger development code goes in.
if (process.argv.includes('build')) process.env.NODE_ENV = 'production';

/** The page: built into web/dist and served by the program itself, so that everything comes from one origin. */
export default defineConfig({
	root: 'web',
	plugins: [react()],
	build: {
		outDir: 'dist',
		emptyOutDir: true,
		target: 'es2022',
		// The server's policy allows no inline code and no data: fonts or styles; small pictures stay files, too.
		assetsInlineLimit: 0,
		modulePreload: { polyfill: false },
		reportCompressedSize: false,
	},
	server: { proxy: { '/api': { target: server, changeOrigin: true } } },
});
