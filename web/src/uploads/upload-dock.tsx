import { useEffect } from 'react';
import { say } from '../../../src/language/speak.ts';
import { Button } from '../parts/button.tsx';
import { progressOf, type Upload } from './upload-list.ts';
import { clearUploads, retryUpload, stopUploads, useUploads } from './upload-queue.ts';

/** Long enough to read one line once everything is read; then the strip goes by itself. */
const TOLD_MS = 10_000;

function Failed({ upload }: { upload: Upload }) {
	const { name, message } = upload;
	return (
		<li className="small row">
			<span className="upload-name">{name}</span>
			<span className="warn">{message}</span>
			<Button
				small
				look="bare"
				onPress={() => void retryUpload(upload)}
				aria-label={say('uploads.againNamed', { name })}
			>
				{say('uploads.again')}
			</Button>
		</li>
	);
}

/**
 * Photos on their way, in a strip below the page that nothing lies under: one bar for what its words say, what failed with another try. It goes when
 * everything is read.
 */
export function UploadDock() {
	const list = useUploads();
	const { total, done, open, failed } = progressOf(list);
	const isOver = total > 0 && open === 0 && failed === 0;
	useEffect(() => {
		if (!isOver) return;
		const timer = setTimeout(clearUploads, TOLD_MS);
		return () => clearTimeout(timer);
	}, [isOver]);
	if (total === 0) return null;
	const blanks = { done, count: total, failed };
	return (
		<aside className="dock" aria-label={say('uploads.label')}>
			<div className="dock-line">
				<span role="status">{failed > 0 ? say('uploads.readNot', blanks) : say('uploads.read', blanks)}</span>
				<progress value={done} max={total} aria-label={say('uploads.bar')} />
				{open > 0 ? (
					<Button small onPress={() => void stopUploads()}>
						{say('uploads.stop')}
					</Button>
				) : (
					<Button small onPress={clearUploads}>
						{say('uploads.close')}
					</Button>
				)}
			</div>
			{failed > 0 ? (
				<ul>
					{list
						.filter(({ state }) => state === 'refused' || state === 'stopped')
						.map((upload) => (
							<Failed key={upload.key} upload={upload} />
						))}
				</ul>
			) : null}
		</aside>
	);
}
