import { counted } from '../../../src/wardrobe/words/counted.ts';
import { Button } from '../parts/button.tsx';
import { progressOf, type Upload } from './upload-list.ts';
import { clearUploads, retryUpload, stopUploads, useUploads } from './upload-queue.ts';

const STATES: Readonly<Record<Upload['state'], string>> = {
	waiting: 'waiting',
	sending: 'being sent',
	reading: 'being read',
	read: 'read',
	refused: 'not read',
	stopped: 'stopped',
};

/** What is still to be looked at: what failed first, then what is under way. */
const shownFirst = (list: readonly Upload[]): readonly Upload[] =>
	[
		...list.filter((one) => one.message !== ''),
		...list.filter((one) => one.message === '' && one.state !== 'read'),
	].slice(0, 30);

/** Photos on their way, photo by photo, with stop and try again; gone when there is nothing to tell. */
export function UploadDock() {
	const list = useUploads();
	if (list.length === 0) return null;
	const { total, done, open, failed, share } = progressOf(list);
	const sentence = `${done} of ${counted(total, 'photo')} read${failed > 0 ? `, ${failed} not` : ''}`;
	return (
		<aside className="dock" aria-label="Photos on their way">
			<div className="row">
				<span role="status">{sentence}</span>
				<span className="row-end">
					{open > 0 ? (
						<Button small onPress={() => void stopUploads()}>
							Stop
						</Button>
					) : (
						<Button small onPress={clearUploads}>
							Close
						</Button>
					)}
				</span>
			</div>
			<progress value={share} max={1} aria-label="Photos read" />
			<ul>
				{shownFirst(list).map((upload) => (
					<li key={upload.key} className="small">
						<div className="row">
							<span className="upload-name">{upload.name}</span>
							<span className="quiet">{STATES[upload.state]}</span>
							{upload.state === 'refused' || upload.state === 'stopped' ? (
								<Button
									small
									look="bare"
									onPress={() => void retryUpload(upload)}
									aria-label={`Try ${upload.name} again`}
								>
									Try again
								</Button>
							) : null}
						</div>
						{upload.message ? <p className="warn">{upload.message}</p> : null}
						{upload.state === 'sending' ? (
							<progress value={upload.sentShare} max={1} aria-label={`Sent of ${upload.name}`} />
						) : null}
					</li>
				))}
			</ul>
		</aside>
	);
}
