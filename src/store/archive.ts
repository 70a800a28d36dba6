/**
 * Form of an archive: a tar whose first entry names the format, then the files of the home, last their checksums. A cut archive thus has no
 * checksums and is refused, and a home of any size is read once.
 */
export const ARCHIVE_HEAD = 'dyelot-home.json';
export const ARCHIVE_CHECKSUMS = 'checksums.json';
export const ARCHIVE_FORMAT = { format: 'dyelot-home', version: 2 } as const;

/** What the archive says of each of its files. */
export type ArchivedFile = { readonly path: string; readonly sizeBytes: number; readonly sha256: string };

/** The archive is not what was expected; nothing was changed. */
export class BadArchiveError extends Error {}
