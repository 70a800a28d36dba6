import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
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
import { UnkeptOutline } from './unkept-outline.tsx';
import { useOutline } from './use-outline.ts';
import './photo-editor.css';

const VIEWS = ['outline', 'light', 'eyedropper'] as const;

/** What is drawn lives here, so that it outlasts a look at the light; `isClosing` = the photo was closed, which waits for an answer. */
function PhotoTools({
	photo,
	pickFor,
	isClosing,
	onDrawn,
	onClose,
	onGoOn,
}: {
	photo: PhotoRecord;
	pickFor: string | undefined;
	isClosing: boolean;
	onDrawn: (isDrawn: boolean) => void;
	onClose: () => void;
	onGoOn: () => void;
}) {
	const [view, setView] = useState<(typeof VIEWS)[number]>('outline');
	const [closesWhenKept, setClosesWhenKept] = useState(false);
	const outline = useOutline(photo);
	const { isDrawn } = outline;
	useEffect(() => onDrawn(isDrawn), [isDrawn, onDrawn]);
	useEffect(() => {
		if (closesWhenKept && !isDrawn) onClose();
	}, [closesWhenKept, isDrawn, onClose]);
	const views = {
		outline: () => <OutlineEditor outline={outline} />,
		light: () => <LightTools photo={photo} />,
		eyedropper: () => <PointPicker photo={photo} pickFor={pickFor} />,
	};
	return (
		<>
			{isClosing ? (
				<UnkeptOutline
					isKeeping={outline.isKeeping}
					onKeep={() => {
						setClosesWhenKept(true);
						outline.keep();
					}}
					onDrop={onClose}
					onGoOn={onGoOn}
				/>
			) : null}
			<div className="photo-columns">
				<div className="stack">
					<Choices
						label={say('photo.lookAt')}
						value={view}
						options={VIEWS.map((one) => [one, say(`photo.${one}`)] as const)}
						small
						onChange={setView}
					/>
					{photo.reading === null ? <ReadingNote photo={photo} /> : views[view]()}
				</div>
				<ReadingWords photo={photo} />
			</div>
		</>
	);
}

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
	const [isDrawn, setDrawn] = useState(false);
	const [isClosing, setClosing] = useState(false);
	const { data: photo, error } = useQuery({
		queryKey: ['photo', photoId],
		queryFn: () => call('getPhoto', { params: { id: photoId } }),
	});
	return (
		<Dialog title={title} onClose={() => (isDrawn ? setClosing(true) : onClose())}>
			<Problem of={error} />
			{photo ? (
				<PhotoTools
					photo={photo}
					pickFor={pickFor}
					isClosing={isClosing}
					onDrawn={setDrawn}
					onClose={onClose}
					onGoOn={() => setClosing(false)}
				/>
			) : (
				<Loading what={say('photo.loading')} />
			)}
		</Dialog>
	);
}
