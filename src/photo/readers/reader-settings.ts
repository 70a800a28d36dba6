/**
 * Settings of the GNU C library's allocator for the process that reads photos, read only as it starts; other systems ignore them. Pictures come and
 * go in blocks of megabytes, and without these most of that memory stays with the process: measured over 80 photos of 8 megapixels, 570 MB; 303 MB
 * with one arena for all threads and blocks from 4 MB on given back at once, 15 to 45 MB less again from 2 MB on. Blocks from 128 kB on: a tenth
 * more processor time. A heap that grows by 4 MB at once grows and shrinks less often: a fiftieth less time, no more memory. Memory asked for in
 * pages of 2 MB (GNU C library 2.35 on; others pass over it) comes in a seventh of the page faults: a fifth less time a photo.
 */
export const READER_ENVIRONMENT = {
	GLIBC_TUNABLES: 'glibc.malloc.hugetlb=1',
	MALLOC_ARENA_MAX: '1',
	MALLOC_MMAP_THRESHOLD_: '2097152',
	MALLOC_TOP_PAD_: '4194304',
	MALLOC_TRIM_THRESHOLD_: '4194304',
} as const;

/**
 * The collector can be called so that the worker may clear up after each photo. New objects get a megabyte or two a thread: arrays of pixels lie
 * elsewhere, and by default each thread may keep 48 MB of garbage for no gain in time. What a photo leaves is cleared up while it is new; going
 * through all objects is done by the thread itself (by four helping threads at once, as by default, it takes more than twice the time) and seldom:
 * the collector waits until one and a half times what was in use has come on top, and does not take little garbage for idleness, in which it
 * would drop compiled code that the next photo needs (an eighth more time a photo). Idle threads are ended by the pool instead.
 */
export const READER_FLAGS = [
	'--expose-gc',
	'--max-semi-space-size=1',
	'--no-concurrent-marking',
	'--heap-growing-percent=150',
	'--no-memory-reducer',
] as const;
