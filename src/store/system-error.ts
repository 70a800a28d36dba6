import { say } from '../language/speak.ts';

/** What the system means by each of its codes (POSIX.1-2017, errno.h), of a file or folder. */
const KNOWN = [
	'EACCES',
	'EBUSY',
	'EDQUOT',
	'EEXIST',
	'EIO',
	'EISDIR',
	'ELOOP',
	'EMFILE',
	'ENAMETOOLONG',
	'ENOENT',
	'ENOSPC',
	'ENOTDIR',
	'ENOTEMPTY',
	'EPERM',
	'EROFS',
	'EXDEV',
] as const;

/** What the system says of a file or folder, in words: "there is no such file or folder"; null where the error is no such one. */
export function meaningOfSystemError(error: unknown): string | null {
	const { code } = (error ?? {}) as NodeJS.ErrnoException;
	if (code === undefined || !/^E[A-Z0-9]+$/.test(code)) return null;
	const known = KNOWN.find((one) => one === code);
	return known ? say(`systemErrors.${known}`) : say('systemErrors.other', { code });
}

/** A system error as a sentence that names the file; null where it is no such error. */
export function sentenceOfSystemError(error: unknown): string | null {
	const meaning = meaningOfSystemError(error);
	if (meaning === null) return null;
	const { path } = error as NodeJS.ErrnoException;
	return path ? say('systemErrors.use', { path, meaning }) : say('systemErrors.useDisk', { meaning });
}
