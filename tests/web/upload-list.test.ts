import { describe, expect, it } from 'vitest';
import { afterPhotoEvent, afterTaken, progressOf, type Upload } from '../../web/src/uploads/upload-list.ts';

const upload = (change: Partial<Upload> = {}): Upload => ({
	key: 1,
	name: 'shirt.jpg',
	purpose: 'garment',
	seasonId: 's',
	state: 'sending',
	sentShare: 0.5,
	message: '',
	photoId: null,
	entryId: null,
	...change,
});

describe('photos on their way', () => {
	it('a photo that was taken is being read until something else is told of it', () => {
		const taken = { name: 'shirt.jpg', ok: true, photoId: 'p', entryId: 'g', keptBefore: true } as const;
		expect(afterTaken(upload(), taken)).toMatchObject({ state: 'reading', photoId: 'p', entryId: 'g' });
	});

	it('a refused file keeps the reason it was refused for', () => {
		const refused = { name: 'a.jpg', ok: false, reason: 'not-a-photo', message: 'Expected a photo.' } as const;
		expect(afterTaken(upload(), refused)).toMatchObject({ state: 'refused', message: 'Expected a photo.' });
	});

	it('a reading that ended changes its own photo and no other', () => {
		const list = [
			upload({ key: 1, photoId: 'p', state: 'reading' }),
			upload({ key: 2, photoId: 'q', state: 'reading' }),
		];
		const after = afterPhotoEvent(list, { id: 'q', status: 'failed' }, 'too dark');
		expect(after.map(({ state, message }) => [state, message])).toEqual([
			['reading', ''],
			['refused', 'too dark'],
		]);
		expect(afterPhotoEvent(after, { id: 'q', status: 'read' }, '')[1]).toMatchObject({ state: 'read', message: '' });
	});

	it('progress counts what is read, what failed and what is under way: the bar and its words say the same', () => {
		const list = [
			upload({ state: 'waiting', sentShare: 0 }),
			upload({ state: 'sending', sentShare: 0.5 }),
			upload({ state: 'reading' }),
			upload({ state: 'read' }),
			upload({ state: 'refused' }),
		];
		expect(progressOf(list)).toEqual({ total: 5, done: 1, failed: 1, open: 3 });
		expect(progressOf([])).toEqual({ total: 0, done: 0, failed: 0, open: 0 });
	});
});
