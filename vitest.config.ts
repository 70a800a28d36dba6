import { defineConfig } from 'vitest/config';

/**
 * A test that hangs must end some day; none may fail because the machine is busy with other things. Hooks have as long, so that slow making
 * ready fails nothing either.
 */
const NEVER_BY_THE_CLOCK = { testTimeout: 900_000, hookTimeout: 900_000, teardownTimeout: 60_000 };

/**
 * Files of one worker share what they import: loading the server and the networks anew for each file took longer than many a file's tests. So no
 * file may leave anything changed that another can see.
 */
const SHARED = { isolate: false, restoreMocks: true };

/**
 * What drives the whole program, kills it, or reads photo after photo: nearly every change may break these, and they take minutes. `npm run check` leaves
 * them to `npm test`.
 */
const SLOW = [
	'tests/faults/**',
	'tests/hosted/**',
	'tests/server/hosted/**',
	'tests/photo/*.test.ts',
	'tests/app/demo-readings.test.ts',
	'tests/app/beside/**',
	'tests/cli/commands.test.ts',
	'tests/reading/reading-of-pixels.test.ts',
	'tests/server/demo.test.ts',
	'tests/server/garment-photos.test.ts',
	'tests/server/odd-requests.test.ts',
	'tests/server/work-done.test.ts',
	'tests/store/backup.test.ts',
	'tests/store/postgres-store.test.ts',
	'tests/store/sqlite-store.test.ts',
];

export default defineConfig({
	test: {
		projects: [
			{
				test: {
					name: 'unit',
					include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
					exclude: ['tests/browser/**', 'tests/downloads/**', ...(process.env.DYELOT_CHECK === 'quick' ? SLOW : [])],
					setupFiles: ['tests/support/leave-nothing.ts'],
					...SHARED,
					...NEVER_BY_THE_CLOCK,
				},
			},
			{
				test: {
					name: 'browser',
					include: ['tests/browser/**/*.test.ts'],
					globalSetup: ['tests/support/browser-setup.ts'],
					setupFiles: ['tests/support/leave-nothing.ts', 'tests/support/path-steps.ts'],
					...SHARED,
					...NEVER_BY_THE_CLOCK,
					expect: { poll: { timeout: 180_000 } },
					fileParallelism: false,
				},
			},
			{
				test: {
					name: 'downloads',
					include: ['tests/downloads/**/*.test.ts'],
					...NEVER_BY_THE_CLOCK,
					expect: { poll: { timeout: 180_000 } },
					fileParallelism: false,
				},
			},
		],
	},
});
