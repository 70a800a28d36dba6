import type { IntakeItem, Purpose } from '../../../src/app/intake-item.ts';

/** One photo on its way: waiting, being sent, sent and being read, done, or stopped somewhere. */
export type Upload = {
	readonly key: number;
	readonly name: string;
	readonly purpose: Purpose;
	readonly seasonId: string;
	readonly state: 'waiting' | 'sending' | 'reading' | 'read' | 'refused' | 'stopped';
	/** 0..1. */
	readonly sentShare: number;
	/** Why it was refused or could not be read; '' otherwise. */
	readonly message: string;
	readonly photoId: string | null;
	readonly entryId: string | null;
};

/** The list with one entry changed; the same list where there is no such entry. */
export const withUpload = (list: readonly Upload[], key: number, change: Partial<Upload>): readonly Upload[] =>
	list.map((upload) => (upload.key === key ? { ...upload, ...change } : upload));

/** The entry after the server answered. */
export function afterTaken(upload: Upload, taken: IntakeItem): Upload {
	if (!taken.ok) return { ...upload, state: 'refused', message: taken.message };
	const { photoId, entryId } = taken;
	return { ...upload, state: 'reading', sentShare: 1, photoId, entryId, message: '' };
}

/** The list after a photo's reading ended, or began again. */
export function afterPhotoEvent(
	list: readonly Upload[],
	event: { readonly id: string; readonly status: 'waiting' | 'read' | 'failed' },
	message: string,
): readonly Upload[] {
	return list.map((upload) => {
		if (upload.photoId !== event.id) return upload;
		if (event.status === 'read') return { ...upload, state: 'read', message: '' };
		if (event.status === 'waiting') return { ...upload, state: 'reading', message: '' };
		return { ...upload, state: 'refused', message };
	});
}

/** How far the whole list is. Waiting, sending and being read count as open. */
export function progressOf(list: readonly Upload[]): {
	readonly total: number;
	readonly done: number;
	readonly open: number;
	readonly failed: number;
} {
	const failed = list.filter(({ state }) => state === 'refused' || state === 'stopped').length;
	const done = list.filter(({ state }) => state === 'read').length;
	return { total: list.length, done, failed, open: list.length - done - failed };
}
