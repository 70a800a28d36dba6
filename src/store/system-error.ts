/** What the system means by each of its codes (POSIX.1-2017, errno.h), of a file or folder. */
const MEANINGS: Readonly<Record<string, string>> = {
	EACCES: 'you may not read or change it',
	EBUSY: 'another program uses it',
	EDQUOT: 'your share of the disk is full',
	EEXIST: 'it is there already',
	EIO: 'the disk reports an error',
	EISDIR: 'it is a folder',
	ELOOP: 'it is a link that leads to itself',
	EMFILE: 'too many files are open',
	ENAMETOOLONG: 'its name is too long',
	ENOENT: 'there is no such file or folder',
	ENOSPC: 'the disk is full',
	ENOTDIR: 'a part of its path is a file, no folder',
	ENOTEMPTY: 'it is a folder that is not empty',
	EPERM: 'the system does not allow it',
	EROFS: 'its disk can only be read',
	EXDEV: 'it lies on another disk',
};

/** What the system says of a file or folder, in words: "there is no such file or folder"; null where the error is no such one. */
export function meaningOfSystemError(error: unknown): string | null {
	const { code } = (error ?? {}) as NodeJS.ErrnoException;
	if (code === undefined || !/^E[A-Z0-9]+$/.test(code)) return null;
	return MEANINGS[code] ?? `the system refuses (${code})`;
}

/** A system error as a sentence that names the file; null where it is no such error. */
export function sentenceOfSystemError(error: unknown): string | null {
	const meaning = meaningOfSystemError(error);
	if (meaning === null) return null;
	const { path } = error as NodeJS.ErrnoException;
	return `Expected to use ${path ? `"${path}"` : 'the disk'}; ${meaning}.`;
}
