import { createHash } from 'node:crypto';
import type { IncomingFile } from './incoming-file.ts';
import type { OpenedFile } from './open-file.ts';
import type { DerivedName } from './store.ts';

/**
 * Name under which a picture is kept beside its original. A mask is the user's own work and gets a new name with each version of
 * its photo, so that writing one never harms the one before.
 */
export type PictureName = DerivedName | `mask-${string}`;

/** An outline drawn by hand, as a file: whose photo's, and which of its outlines. */
export type Outline = { readonly photoId: string; readonly name: `mask-${string}` };

/** Name of a file with an outline drawn by hand. */
const OUTLINE_FILE = /^([0-9a-f]{64})\.(mask-[0-9a-f]+)\.png$/;

/** The outline that a file of this name holds; null where it holds something else. */
export function outlineOf(fileName: string): Outline | null {
	const [, photoId, name] = OUTLINE_FILE.exec(fileName) ?? [];
	return photoId && name ? { photoId, name: name as Outline['name'] } : null;
}

/** Where originals and derived pictures of photos lie, by the SHA-256 of the original: a folder, or an object store. */
export type PhotoFiles = {
	/** On disk when it resolves. Known content is not written again. */
	writeOriginal(id: string, bytes: Uint8Array): Promise<void>;
	/** The same for a file that lies on this machine's disk, synced: it is moved there, or dropped where its content is known. */
	takeOriginal(id: string, file: IncomingFile): Promise<void>;
	original(id: string): Promise<Uint8Array>;
	/** The same, never held as a whole; null where it is missing. */
	openOriginal(id: string): Promise<OpenedFile | null>;
	/** Absolute path for a worker on this machine, or null where the files are elsewhere. */
	originalPath(id: string): Promise<string | null>;
	writeDerived(id: string, name: PictureName, bytes: Uint8Array): Promise<void>;
	/** null where there is none. */
	derived(id: string, name: PictureName): Promise<Uint8Array | null>;
	removeDerived(id: string, name: PictureName): Promise<void>;
	/** The outlines drawn by hand that are kept, and when each was written last. */
	outlines(): Promise<readonly (Outline & { readonly writtenAt: Date })[]>;
	/** Everything of this home, for good. */
	removeAll(): Promise<void>;
};

/** The name a photo's bytes give it. */
export const photoIdOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const ID = /^[0-9a-f]{64}$/;
const PICTURE = /^(thumb|display|cutout|labels|mask(-[0-9a-f]+)?)$/;

/** Whether it can be a photo's id: a SHA-256 in hex. */
export const isPhotoId = (id: unknown): id is string => typeof id === 'string' && ID.test(id);

/** Whether it can be the name of a picture beside a photo. */
export const isPictureName = (name: string): name is PictureName => PICTURE.test(name);

function checkedId(id: string): string {
	if (!isPhotoId(id)) throw new TypeError(`expected a SHA-256 in hex as a photo's id, received ${id}`);
	return id;
}

/** Place of an original below the root of a home, with `/` between folders. An id that is no hash is refused: it could be a path. */
export const originalKey = (id: string): string => `photos/${checkedId(id).slice(0, 2)}/${id}`;

/** Place of a derived picture below the root of a home. */
export function derivedKey(id: string, name: PictureName): string {
	if (!isPictureName(name)) throw new TypeError(`expected the name of a derived picture, received ${String(name)}`);
	return `derived/${checkedId(id).slice(0, 2)}/${id}.${name}.${endingOf(name)}`;
}

/** Maps of labels must come back value by value; the large copy is a JPEG, which costs a sixth of a WebP's time; the rest is small, or has alpha. */
function endingOf(name: PictureName): 'png' | 'jpg' | 'webp' {
	if (name === 'labels' || name.startsWith('mask')) return 'png';
	return name === 'display' ? 'jpg' : 'webp';
}

const MEDIA_TYPES = { png: 'image/png', jpg: 'image/jpeg', webp: 'image/webp' } as const;

/** Media type of a derived picture. */
export const mediaTypeOf = (name: PictureName): string => MEDIA_TYPES[endingOf(name)];

/** What a path below the root of a home may look like. */
export const PHOTO_KEY: RegExp =
	/^(photos\/[0-9a-f]{2}\/[0-9a-f]{64}|derived\/[0-9a-f]{2}\/[0-9a-f]{64}\.[a-z0-9-]+\.(png|jpg|webp))$/;
