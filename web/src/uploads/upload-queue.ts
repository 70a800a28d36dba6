import { useSyncExternalStore } from 'react';
import type { Purpose } from '../../../src/app/intake-item.ts';
import { say } from '../../../src/language/speak.ts';
import { call } from '../api/call.ts';
import { onPhotoEvent, refreshUnheard } from '../api/live.ts';
import { RequestProblem } from '../api/request.ts';
import { newRequestKey } from '../api/request-key.ts';
import { sendPhoto } from './send-photo.ts';
import { afterPhotoEvent, afterTaken, type Upload, withUpload } from './upload-list.ts';

/** Photos sent at a time: enough to keep the line full, few enough that each one moves. */
const AT_A_TIME = 3;
/** The program's own advice is five seconds. */
const BUSY_MS = 5000;

let list: readonly Upload[] = [];
let nextKey = 1;
const files = new Map<number, File>();
/** One for each photo, so that trying again is the same request. */
const requestKeys = new Map<number, string>();
const senders = new Map<number, AbortController>();
const listeners = new Set<() => void>();

function change(next: readonly Upload[]): void {
	list = next;
	for (const listener of listeners) listener();
}

/** The photos on their way and those that came in since the list was last cleared. */
export const useUploads = (): readonly Upload[] =>
	useSyncExternalStore(
		(listener) => {
			listeners.add(listener);
			return () => void listeners.delete(listener);
		},
		() => list,
	);

/**
 * Asks once for a photo that was just taken: it may have been read before its id was known here, and what was told of it then was not heard. What is told
 * from now on is, so an answer that is older says nothing.
 */
async function hearWhatWasMissed(photoId: string): Promise<void> {
	const { status, failure } = await call('getPhoto', { params: { id: photoId } });
	if (status !== 'waiting')
		change(afterPhotoEvent(list, { id: photoId, status }, failure?.message ?? say('uploads.notRead')));
}

async function send(upload: Upload): Promise<void> {
	const { key } = upload;
	const stop = new AbortController();
	senders.set(key, stop);
	change(withUpload(list, key, { state: 'sending', sentShare: 0, message: '' }));
	try {
		const onShare = (sentShare: number) => change(withUpload(list, key, { sentShare }));
		const taken = await sendPhoto(
			files.get(key)!,
			{ ...upload, requestKey: requestKeys.get(key)! },
			onShare,
			stop.signal,
		);
		change(withUpload(list, key, afterTaken(upload, taken)));
		if (taken.ok) await hearWhatWasMissed(taken.photoId);
	} catch (error) {
		if (!(error instanceof RequestProblem)) throw error;
		if (error.code === 'busy') {
			// Another page or device is sending: this photo keeps its place and tries again by itself.
			change(withUpload(list, key, { state: 'waiting', sentShare: 0 }));
			await new Promise((resolve) => setTimeout(resolve, BUSY_MS));
			return;
		}
		change(withUpload(list, key, { state: error.code === 'stopped' ? 'stopped' : 'refused', message: error.message }));
	} finally {
		senders.delete(key);
		refreshUnheard(false);
		advance();
	}
}

function advance(): void {
	for (const upload of list) {
		if (senders.size >= AT_A_TIME) return;
		if (upload.state === 'waiting') void send(upload);
	}
}

/** Puts photos in the queue; they are sent while the user goes on. */
export function addUploads(added: readonly File[], purpose: Purpose, seasonId: string): void {
	const fresh = added.map((file): Upload => {
		const key = nextKey++;
		files.set(key, file);
		requestKeys.set(key, newRequestKey());
		const name = file.name || say('uploads.pasted');
		return { key, name, purpose, seasonId, state: 'waiting', sentShare: 0, message: '', photoId: null, entryId: null };
	});
	// What was read before is told already: the count is of what is under way.
	const isOver = list.every(({ state }) => state === 'read');
	change(isOver ? fresh : [...list, ...fresh]);
	advance();
}

/** Sends or reads a photo again that was refused or stopped. */
export async function retryUpload(upload: Upload): Promise<void> {
	if (upload.photoId) {
		change(withUpload(list, upload.key, { state: 'reading', message: '' }));
		await call('readAgain', { params: { id: upload.photoId } });
		return;
	}
	change(withUpload(list, upload.key, { state: 'waiting', message: '' }));
	advance();
}

/** Stops everything not yet sent or not yet read; what is stored stays stored. */
export async function stopUploads(): Promise<void> {
	change(
		list.map((one) => (one.state === 'waiting' ? { ...one, state: 'stopped', message: say('uploads.stopped') } : one)),
	);
	for (const sender of senders.values()) sender.abort();
	await call('stopReading', {});
}

/** Takes what is finished off the list. */
export function clearUploads(): void {
	for (const { key, state } of list) if (state === 'read') files.delete(key);
	change(list.filter(({ state }) => state === 'waiting' || state === 'sending' || state === 'reading'));
}

onPhotoEvent((event) => {
	if (!list.some(({ photoId }) => photoId === event.id)) return;
	if (event.status !== 'failed') return change(afterPhotoEvent(list, event, ''));
	void call('getPhoto', { params: { id: event.id } }).then((photo) =>
		change(afterPhotoEvent(list, event, photo.failure?.message ?? say('uploads.notRead'))),
	);
});
