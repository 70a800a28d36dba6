import { useEffect, useRef, useState } from 'react';
import { type Lab65, labFromSrgb8 } from '../../../../src/colour/lab65.ts';
import { medianLab } from '../../../../src/colour/median-lab.ts';
import { say } from '../../../../src/language/speak.ts';
import { loadPicture, pixelsOf, workingSize } from '../../photo/picture-pixels.ts';
import { PicturePointer, type Point } from '../../photo/picture-pointer.tsx';

/** Half the side of the square whose median colour is taken, in pixels of the picture as it is worked on: a single pixel may be noise. */
const AROUND = 3;

/** The median colour around a point of a picture. */
function colourAt({ data, width, height }: ImageData, { x, y }: Point): Lab65 {
	const [column, row] = [Math.floor(x * width), Math.floor(y * height)];
	const labs: number[] = [];
	for (let at = Math.max(0, row - AROUND); at <= Math.min(height - 1, row + AROUND); at++)
		for (let over = Math.max(0, column - AROUND); over <= Math.min(width - 1, column + AROUND); over++) {
			const pixel = (at * width + over) * 4;
			labs.push(...labFromSrgb8(data[pixel]!, data[pixel + 1]!, data[pixel + 2]!));
		}
	return medianLab(Float32Array.from(labs));
}

type Opened = { readonly address: string; readonly pixels: ImageData };

/** A picture opened in the browser alone, to take a colour from by pointing at it. */
export function ColourFromPicture({ onPick }: { onPick: (lab: Lab65) => void }) {
	const surface = useRef<HTMLImageElement>(null);
	const [opened, setOpened] = useState<Opened | null>(null);
	const [failed, setFailed] = useState(false);
	const [mark, setMark] = useState<Point | null>(null);
	useEffect(
		() => () => {
			if (opened) URL.revokeObjectURL(opened.address);
		},
		[opened],
	);
	const open = async (file: File) => {
		const address = URL.createObjectURL(file);
		setMark(null);
		try {
			const picture = await loadPicture(address);
			const pixels = pixelsOf(picture, workingSize(picture.naturalWidth, picture.naturalHeight), true);
			setOpened({ address, pixels });
			setFailed(false);
		} catch {
			URL.revokeObjectURL(address);
			setOpened(null);
			setFailed(true);
		}
	};
	return (
		<details>
			<summary>{say('colours.picture')}</summary>
			<div className="stack">
				<p className="quiet small">{say('colours.stays')}</p>
				<label className="field">
					<span className="field-label">{say('colours.chooseFile')}</span>
					<input
						type="file"
						accept="image/*"
						onChange={(event) => {
							const file = event.target.files?.[0];
							if (file) void open(file);
						}}
					/>
				</label>
				{failed ? <p className="warn small">{say('colours.noPicture')}</p> : null}
				{opened ? (
					<PicturePointer
						label={say('colours.pointAt')}
						surface={surface}
						marks={mark ? [mark] : []}
						onTap={(point) => {
							setMark(point);
							onPick(colourAt(opened.pixels, point));
						}}
					>
						<img ref={surface} className="pointer-picture" src={opened.address} alt="" draggable={false} />
					</PicturePointer>
				) : null}
			</div>
		</details>
	);
}
