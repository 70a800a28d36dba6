import { say } from '../language/speak.ts';

/** What the system means by each of its codes (POSIX.1-2017, errno.h), of a file or folder. */
const NAMED_CODES = [
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
	const named = NAMED_CODES.find((one) => one === code);
	return named ? say(`systemErrors.${named}`) : say('systemErrors.other', { code });
}

/** A system error as a sentence that names the file; null where it is no such error. */
export function sentenceOfSystemError(error: unknown): string | null {
	const meaning = meaningOfSystemError(error);
	if (meaning === null) return null;
	const { path } = error as NodeJS.ErrnoException;
	return path ? say('systemErrors.use', { path, meaning }) : say('systemErrors.useDisk', { meaning });
}
