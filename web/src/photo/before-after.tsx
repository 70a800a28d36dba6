import { useEffect, useRef } from 'react';
import { say } from '../../../src/language/speak.ts';
import { correctedPicture } from '../../../src/reading/light/corrected-picture.ts';
import type { LightModel } from '../../../src/wardrobe/words/light.ts';
import { loadPicture, pixelsOf } from './picture-pixels.ts';

/** Longest side of the two small pictures, in pixels. */
const SHOWN_SIDE = 320;

function Corrected({ address, model, words }: { address: string; model: LightModel | null; words: string }) {
	const canvas = useRef<HTMLCanvasElement>(null);
	useEffect(() => {
		let left = false;
		loadPicture(address).then((picture) => {
			const target = canvas.current;
			if (left || !target) return;
			const scale = Math.min(1, SHOWN_SIDE / Math.max(picture.naturalWidth, picture.naturalHeight));
			const size = {
				width: Math.max(1, Math.round(picture.naturalWidth * scale)),
				height: Math.max(1, Math.round(picture.naturalHeight * scale)),
			};
			const { data } = pixelsOf(picture, size, true);
			const shown = model ? correctedPicture(data, model) : Uint8ClampedArray.from(data);
			Object.assign(target, size);
			target.getContext('2d')?.putImageData(new ImageData(shown, size.width, size.height), 0, 0);
		}, console.error);
		return () => {
			left = true;
		};
	}, [address, model]);
	return (
		<figure className="before-after-picture">
			<canvas ref={canvas} role="img" aria-label={words} />
			<figcaption className="small quiet">{words}</figcaption>
		</figure>
	);
}

/** The photo as it is, and as it looks with its light taken out, side by side. */
export function BeforeAfter({
	address,
	model,
	afterWords,
}: {
	address: string;
	model: LightModel | null;
	afterWords: string;
}) {
	return (
		<div className="before-after">
			<Corrected address={address} model={null} words={say('lightTools.before')} />
			<Corrected address={address} model={model} words={afterWords} />
		</div>
	);
}
