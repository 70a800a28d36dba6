import { useEffect, useState } from 'react';
import { labFromPixels } from '../../../src/colour/lab-pixels.ts';
import type { LabPicture } from '../../../src/colour/region.ts';
import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { correctPhoto } from '../api/change-thing.ts';
import { pictureAddress } from '../api/pictures.ts';
import { type MaskEdit, maskFromLabels, undone } from './mask-edit.ts';
import { greyOf, loadPicture, maskAsPng, pixelsOf, workingSize } from './picture-pixels.ts';

/** The picture to draw on, and its colours, for regions. */
type Loaded = { readonly picture: HTMLImageElement; readonly labs: LabPicture };

async function load(photoId: string, byHand: boolean): Promise<{ loaded: Loaded; mask: Uint8Array }> {
	const picture = await loadPicture(pictureAddress(photoId, 'display'));
	const size = workingSize(picture.naturalWidth, picture.naturalHeight);
	const labs = { ...size, labs: labFromPixels(pixelsOf(picture, size, true).data, 4) };
	const map = await loadPicture(pictureAddress(photoId, byHand ? 'mask' : 'labels'));
	const grey = greyOf(pixelsOf(map, size, false));
	return {
		loaded: { picture, labs },
		mask: byHand ? grey.map((value) => (value > 127 ? 255 : 0)) : maskFromLabels(grey),
	};
}

/** The outline of a photo while it is looked at: as it is kept, what was drawn since, and how to keep, undo or forget it. */
export function useOutline(photo: PhotoRecord) {
	const [loaded, setLoaded] = useState<Loaded | null>(null);
	const [edit, setEdit] = useState<MaskEdit | null>(null);
	const [failure, setFailure] = useState<Error | null>(null);
	const { id } = photo;
	const byHand = photo.correction.mask === true;
	const isRead = photo.reading !== null;
	useEffect(() => {
		if (!isRead) return;
		let left = false;
		load(id, byHand).then(
			({ loaded: { picture, labs }, mask }) => {
				if (left) return;
				setLoaded({ picture, labs });
				// What was just kept stands there already, and what was drawn meanwhile stays.
				setEdit((old) => (old && byHand ? old : { width: labs.width, height: labs.height, mask, before: [] }));
			},
			() => !left && setFailure(new Error(say('outline.missing'))),
		);
		return () => {
			left = true;
		};
	}, [id, byHand, isRead]);

	const params = { id };
	const save = useChange(
		(mask: MaskEdit) =>
			correctPhoto(photo, async (version) =>
				call('drawOutline', { params, query: { version }, raw: await maskAsPng(mask.mask, mask) }),
			),
		(_, kept) => setEdit((now) => (now?.mask === kept.mask ? { ...now, before: [] } : now)),
	);
	const forget = useChange(() =>
		correctPhoto(photo, (version) => call('forgetOutline', { params, query: { version } })),
	);
	return {
		loaded,
		edit,
		failure,
		byHand,
		isDrawn: (edit?.before.length ?? 0) > 0,
		isKeeping: save.busy,
		isForgetting: forget.busy,
		problem: save.problem ?? forget.problem,
		change: setEdit,
		undo: () => edit && setEdit(undone(edit)),
		keep: () => edit && save.run(edit),
		forget: () => forget.run(undefined),
	};
}

export type Outline = ReturnType<typeof useOutline>;
