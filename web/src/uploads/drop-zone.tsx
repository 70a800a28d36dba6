import { type DragEvent, type ReactNode, useEffect, useState } from 'react';
import { say } from '../../../src/language/speak.ts';

/** Phones that keep HEIC photos offer them only when the ending is named. */
const ACCEPT = 'image/*,.heic,.heif,.avif';

const photosIn = (transfer: DataTransfer | null): File[] =>
	[...(transfer?.files ?? [])].filter((file) => file.size > 0 || file.name !== '');

const isTyping = (target: EventTarget | null): boolean =>
	target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

type OnPhotos = (files: readonly File[]) => void;

/** Takes photos that are pasted anywhere on the page but into a field. */
function usePastedPhotos(onPhotos: OnPhotos): void {
	useEffect(() => {
		const onPaste = (event: ClipboardEvent) => {
			const files = photosIn(event.clipboardData);
			if (files.length === 0 || isTyping(event.target)) return;
			event.preventDefault();
			onPhotos(files);
		};
		document.addEventListener('paste', onPaste);
		return () => document.removeEventListener('paste', onPaste);
	}, [onPhotos]);
}

/** A button that opens the system's choice of photos, or the phone's camera. */
function PhotoPicker({ text, camera = false, onPhotos }: { text: string; camera?: boolean; onPhotos: OnPhotos }) {
	return (
		<label className={camera ? 'button camera' : 'button'}>
			{text}
			<input
				type="file"
				accept={ACCEPT}
				{...(camera ? { capture: 'environment' as const } : { multiple: true })}
				onChange={(event) => {
					const files = [...(event.target.files ?? [])];
					event.target.value = '';
					if (files.length > 0) onPhotos(files);
				}}
			/>
		</label>
	);
}

/** A place for photos: drop them, pick them, paste them, or take one with the phone. */
export function DropZone({
	label,
	children,
	onPhotos,
}: {
	/** What the photos are, as in "pictures for the board". */
	label: string;
	children?: ReactNode;
	onPhotos: OnPhotos;
}) {
	const [over, setOver] = useState(false);
	usePastedPhotos(onPhotos);
	const onDrop = (event: DragEvent) => {
		event.preventDefault();
		setOver(false);
		const files = photosIn(event.dataTransfer);
		if (files.length > 0) onPhotos(files);
	};
	return (
		<section
			className="drop"
			aria-label={say('uploads.add', { what: label })}
			data-over={over}
			onDragOver={(event) => {
				event.preventDefault();
				setOver(true);
			}}
			onDragLeave={(event) => event.currentTarget === event.target && setOver(false)}
			onDrop={onDrop}
		>
			<PhotoPicker text={say('uploads.add', { what: label })} onPhotos={onPhotos} />
			<PhotoPicker text={say('uploads.takePhoto')} camera onPhotos={onPhotos} />
			<span className="quiet small drop-how">{say('uploads.orDrop')}</span>
			{children}
		</section>
	);
}
