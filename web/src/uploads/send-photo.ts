import type { IntakeItem, Purpose } from '../../../src/app/intake-item.ts';
import { say, spokenLanguage } from '../../../src/language/speak.ts';
import { addressOfCall } from '../api/call.ts';
import { OWN_PAGE, problemOfAnswer, RequestProblem } from '../api/request.ts';

/**
 * Sends one photo; `onShare` hears how much of it is sent (0..1). XMLHttpRequest, because fetch does not tell that. Rejects
 * with {@link RequestProblem}, code `stopped` when `signal` ended it.
 */
export function sendPhoto(
	file: File,
	about: { readonly purpose: Purpose; readonly seasonId: string; readonly requestKey: string },
	onShare: (share: number) => void,
	signal: AbortSignal,
): Promise<IntakeItem> {
	return new Promise((resolve, reject) => {
		const form = new FormData();
		form.append('purpose', about.purpose);
		form.append('seasonId', about.seasonId);
		form.append('photo', file, file.name || say('uploads.pasted'));
		const sender = new XMLHttpRequest();
		sender.open('POST', addressOfCall('addPhotos'));
		for (const [name, value] of Object.entries(OWN_PAGE)) sender.setRequestHeader(name, value);
		sender.setRequestHeader('accept-language', spokenLanguage());
		sender.setRequestHeader('idempotency-key', about.requestKey);
		sender.responseType = 'json';
		sender.upload.onprogress = (event) => event.lengthComputable && onShare(event.loaded / event.total);
		sender.onload = () => {
			const item = (sender.response as { items?: IntakeItem[] } | null)?.items?.[0];
			if (sender.status === 202 && item) resolve(item);
			else reject(problemOfAnswer(sender.status, sender.response));
		};
		sender.onerror = () => reject(new RequestProblem('unreachable', say('uploads.unreachable')));
		sender.onabort = () => reject(new RequestProblem('stopped', say('uploads.stopped')));
		signal.addEventListener('abort', () => sender.abort());
		sender.send(form);
	});
}
