import { useRef, useState } from 'react';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { changePalette } from '../api/change-thing.ts';
import { usePicture } from '../api/pictures.ts';
import { Button } from '../parts/button.tsx';
import { Problem } from '../parts/problem.tsx';
import { Swatch } from '../parts/swatch.tsx';
import { PicturePointer, type Point } from './picture-pointer.tsx';

type Picked = { readonly x: number; readonly y: number; readonly lab: Lab65; readonly uncorrected: Lab65 };

/** The eyedropper: the colour at any point, as corrected for the light and as the photo has it. */
export function PointPicker({ photo, pickFor }: { photo: PhotoRecord; pickFor: string | undefined }) {
	const surface = useRef<HTMLImageElement>(null);
	const address = usePicture(photo.id, 'display');
	const [picked, setPicked] = useState<Picked | null>(null);
	const width = photo.reading?.widthPx ?? 1;
	const height = photo.reading?.heightPx ?? 1;
	const pick = useChange(
		({ x, y }: Point) =>
			call('getColourAt', { params: { id: photo.id }, query: { x: Math.floor(x * width), y: Math.floor(y * height) } }),
		setPicked,
	);
	const add = useChange((lab: Lab65) =>
		changePalette(pickFor ?? '', {}, () =>
			call('editPalette', { params: { id: pickFor ?? '' }, body: { edit: 'add', lab } }),
		),
	);
	const marks = picked ? [{ x: picked.x / width, y: picked.y / height }] : [];
	return (
		<div className="stack">
			<p>{say('photo.pickHow')}</p>
			<PicturePointer label={say('photo.pickLabel')} surface={surface} onTap={pick.run} marks={marks}>
				{address ? <img ref={surface} className="pointer-picture" src={address} alt="" draggable={false} /> : null}
			</PicturePointer>
			{picked ? (
				<div className="row" role="status">
					<Swatch lab={picked.lab} note={say('photo.corrected')} />
					<Swatch lab={picked.uncorrected} note={say('photo.asItIs')} />
					{pickFor ? (
						<Button onPress={() => add.run(picked.lab)} isPending={add.busy}>
							{say('photo.addToPalette')}
						</Button>
					) : null}
				</div>
			) : null}
			<Problem of={pick.problem ?? add.problem} />
		</div>
	);
}
