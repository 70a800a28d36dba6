import { defineConfig } from 'vitest/config';

export default defineConfig({
	test: {
		projects: [
			{
				test: {
					name: 'unit',
					include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
					exclude: ['tests/browser/**', 'tests/downloads/**'],
					testTimeout: 60_000,
				},
			},
			{
				test: {
					name: 'browser',
					include: ['tests/browser/**/*.test.ts'],
					globalSetup: ['tests/support/browser-setup.ts'],
					testTimeout: 120_000,
					hookTimeout: 120_000,
					fileParallelism: false,
				},
			},
			{
				test: {
					name: 'downloads',
					include: ['tests/downloads/**/*.test.ts'],
					testTimeout: 120_000,
					fileParallelism: false,
				},
			},
		],
	},
});
