import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { call } from '../api/call.ts';
import { Choices } from '../parts/choices.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { LightTools } from './light-tools.tsx';
import { OutlineEditor } from './outline-editor.tsx';
import { PointPicker } from './point-picker.tsx';
import { ReadingNote } from './reading-note.tsx';
import { ReadingWords } from './reading-words.tsx';
import './photo-editor.css';

const VIEWS = [
	['outline', 'Outline'],
	['light', 'Light'],
	['eyedropper', 'Eyedropper'],
] as const;

/** One photo: the outline taken as clothes, its colours, and every way to put them right. */
export function PhotoDialog({
	photoId,
	title,
	onClose,
	pickFor,
}: {
	photoId: string;
	title: string;
	onClose: () => void;
	/** Season whose palette may take a colour picked here. */
	pickFor?: string;
}) {
	const [view, setView] = useState<(typeof VIEWS)[number][0]>('outline');
	const { data: photo, error } = useQuery({
		queryKey: ['photo', photoId],
		queryFn: () => call('getPhoto', { params: { id: photoId } }),
	});
	return (
		<Dialog title={title} onClose={onClose}>
			<Problem of={error} />
			{photo ? (
				<div className="photo-columns">
					<div className="stack">
						<Choices label="What to look at" value={view} options={VIEWS} small onChange={setView} />
						{photo.reading === null ? (
							<ReadingNote photo={photo} />
						) : view === 'outline' ? (
							<OutlineEditor key={photo.version} photo={photo} />
						) : view === 'light' ? (
							<LightTools photo={photo} />
						) : (
							<PointPicker photo={photo} pickFor={pickFor} />
						)}
					</div>
					<ReadingWords photo={photo} />
				</div>
			) : (
				<Loading what="the photo" />
			)}
		</Dialog>
	);
}
