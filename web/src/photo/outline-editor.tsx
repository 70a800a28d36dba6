import { useEffect, useRef, useState } from 'react';
import { labFromPixels } from '../../../src/colour/lab-pixels.ts';
import { growRegion, type LabPicture } from '../../../src/colour/region.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { correctPhoto } from '../api/change-thing.ts';
import { pictureAddress } from '../api/pictures.ts';
import { Button } from '../parts/button.tsx';
import { Choices } from '../parts/choices.tsx';
import { percentText } from '../parts/colour-text.ts';
import { Field } from '../parts/field.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import {
	clothesShare,
	type MaskEdit,
	maskFromLabels,
	paintDisc,
	paintStroke,
	undone,
	withRegion,
	withStroke,
} from './mask-edit.ts';
import { drawOutline } from './outline-drawing.ts';
import { greyOf, loadPicture, maskAsPng, pixelsOf, workingSize } from './picture-pixels.ts';
import { PicturePointer, type Point } from './picture-pointer.tsx';

type Tool = 'take' | 'drop' | 'brush' | 'rub';

const TOOLS: readonly (readonly [Tool, string])[] = [
	['take', 'Take a region'],
	['drop', 'Drop a region'],
	['brush', 'Brush on'],
	['rub', 'Brush off'],
];

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

/** The outline taken as clothes, drawn over the photo; a tap takes or drops a whole region, a brush does the rest. */
export function OutlineEditor({ photo }: { photo: PhotoRecord }) {
	const canvas = useRef<HTMLCanvasElement>(null);
	const stroke = useRef<Uint8Array | null>(null);
	const [loaded, setLoaded] = useState<Loaded | null>(null);
	const [edit, setEdit] = useState<MaskEdit | null>(null);
	const [failure, setFailure] = useState<Error | null>(null);
	const [tool, setTool] = useState<Tool>('take');
	const [tolerance, setTolerance] = useState(10);
	const [radius, setRadius] = useState(14);
	const { id } = photo;
	const byHand = photo.correction.mask === true;

	useEffect(() => {
		let current = true;
		load(id, byHand).then(
			({ loaded: { picture, labs }, mask }) => {
				if (!current) return;
				setLoaded({ picture, labs });
				setEdit({ width: labs.width, height: labs.height, mask, before: [] });
			},
			() =>
				current &&
				setFailure(
					new Error('Expected the picture of this photo; it could not be fetched. Close this and open it again.'),
				),
		);
		return () => {
			current = false;
		};
	}, [id, byHand]);

	useEffect(() => {
		// Keeping an outline begins the editor anew, and the button that had the focus is gone: the keys go on at the picture.
		if (loaded && document.activeElement === document.body)
			canvas.current?.closest<HTMLElement>('[role="application"]')?.focus({ preventScroll: true });
	}, [loaded]);

	useEffect(() => {
		if (loaded && edit && canvas.current) drawOutline(canvas.current, loaded.picture, edit.mask, edit);
	}, [loaded, edit]);

	const params = { id: photo.id };
	const save = useChange((mask: MaskEdit) =>
		correctPhoto(photo, async (version) =>
			call('drawOutline', { params, query: { version }, raw: await maskAsPng(mask.mask, mask) }),
		),
	);
	const forget = useChange(() =>
		correctPhoto(photo, (version) => call('forgetOutline', { params, query: { version } })),
	);
	if (failure) return <Problem of={failure} />;
	if (!loaded || !edit) return <Loading what="the outline" />;

	const takes = tool === 'take' || tool === 'brush';
	const brushes = tool === 'brush' || tool === 'rub';
	const inPixels = ({ x, y }: Point) => ({ x: Math.floor(x * edit.width), y: Math.floor(y * edit.height) });
	const onTap = (point: Point) => {
		const at = inPixels(point);
		if (!brushes) return setEdit(withRegion(edit, growRegion(loaded.labs, at.x, at.y, { tolerance }), takes));
		stroke.current ??= edit.mask.slice();
		paintDisc(stroke.current, edit, at.x, at.y, radius, takes);
		if (canvas.current) drawOutline(canvas.current, loaded.picture, stroke.current, edit);
	};
	const onStroke = (from: Point, to: Point) => {
		if (!stroke.current) return;
		paintStroke(stroke.current, edit, inPixels(from), inPixels(to), radius, takes);
		if (canvas.current) drawOutline(canvas.current, loaded.picture, stroke.current, edit);
	};
	const onStrokeEnd = () => {
		if (stroke.current) setEdit(withStroke(edit, stroke.current));
		stroke.current = null;
	};
	const undo = () => setEdit(undone(edit));
	return (
		<div className="stack">
			<Choices label="What a tap does" value={tool} options={TOOLS} small onChange={setTool} />
			<PicturePointer
				label="The photo with the outline of the clothes"
				surface={canvas}
				onTap={onTap}
				{...(brushes ? { onStroke } : {})}
				onStrokeEnd={onStrokeEnd}
				onUndo={undo}
			>
				<canvas ref={canvas} className="pointer-picture" />
			</PicturePointer>
			{brushes ? (
				<Field label={`Brush: ${radius * 2} pixels wide`}>
					{(ids) => (
						<input
							{...ids}
							type="range"
							min={3}
							max={50}
							value={radius}
							onChange={(event) => setRadius(Number(event.target.value))}
						/>
					)}
				</Field>
			) : (
				<Field label={`How different a region’s colours may be from where you tap: ${tolerance}`}>
					{(ids) => (
						<input
							{...ids}
							type="range"
							min={2}
							max={40}
							value={tolerance}
							onChange={(event) => setTolerance(Number(event.target.value))}
						/>
					)}
				</Field>
			)}
			<p className="small quiet" role="status">
				{percentText(clothesShare(edit))} of the picture counts as clothes.
			</p>
			<div className="row">
				<Button look="main" onPress={() => save.run(edit)} isPending={save.busy} isDisabled={edit.before.length === 0}>
					{save.busy ? 'Reading it again …' : 'Keep this outline'}
				</Button>
				<Button onPress={undo} isDisabled={edit.before.length === 0}>
					One step back
				</Button>
				{photo.correction.mask ? (
					<Button onPress={() => forget.run(undefined)} isPending={forget.busy}>
						Back to the outline found by itself
					</Button>
				) : null}
			</div>
			<Problem of={save.problem ?? forget.problem} />
		</div>
	);
}
