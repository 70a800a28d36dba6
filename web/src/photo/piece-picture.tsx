import { useEffect, useRef, useState } from 'react';
import type { Slot } from '../../../src/wardrobe/words/slot.ts';
import { pieceCutout } from './piece-cutout.ts';

/** The piece of a picture by itself on mid-grey; nothing while it is not there, or where the picture shows no such piece. */
export function PiecePicture({ photoId, slot, alt }: { photoId: string | undefined; slot: Slot; alt: string }) {
	const canvas = useRef<HTMLCanvasElement>(null);
	const [isThere, setThere] = useState(false);
	useEffect(() => {
		if (!photoId) return;
		let left = false;
		pieceCutout(photoId, slot).then((cut) => {
			const target = canvas.current;
			if (left || !cut || !target) return;
			Object.assign(target, { width: cut.width, height: cut.height });
			target.getContext('2d')?.putImageData(cut, 0, 0);
			setThere(true);
		}, console.error);
		return () => {
			left = true;
		};
	}, [photoId, slot]);
	return (
		<span className="photo piece-picture" hidden={!isThere}>
			<canvas ref={canvas} role="img" aria-label={alt} />
		</span>
	);
}
