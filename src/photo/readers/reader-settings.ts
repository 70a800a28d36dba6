/**
 * Settings of the GNU C library's allocator for the process that reads photos; other systems ignore them. The library reads them only as the
 * process starts. Pictures come and go in blocks of megabytes: one arena for all threads, and blocks from 2 MB on given back at once, keep that
 * memory from staying with the process. Steps of 4 MB and pages of 2 MB (from version 2.35 on) save time. Measured: bench/NOTES.md, Readers.
 */
export const READER_ENVIRONMENT = {
	GLIBC_TUNABLES: 'glibc.malloc.hugetlb=1',
	MALLOC_ARENA_MAX: '1',
	MALLOC_MMAP_THRESHOLD_: '2097152',
	MALLOC_TOP_PAD_: '4194304',
	MALLOC_TRIM_THRESHOLD_: '4194304',
} as const;

/**
 * Flags of the V8 engine for the reading threads. The worker clears up after each photo, so it may call the collector. New objects need a megabyte
 * or two: arrays of pixels lie elsewhere. The thread goes through all objects by itself, and seldom. The engine does not drop compiled code while a
 * thread is idle: the pool ends idle threads instead. Measured: bench/NOTES.md, Readers.
 */
export const READER_FLAGS = [
	'--expose-gc',
	'--max-semi-space-size=1',
	'--no-concurrent-marking',
	'--heap-growing-percent=150',
	'--no-memory-reducer',
] as const;
