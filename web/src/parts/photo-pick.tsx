import type { ReactNode } from 'react';
import { say } from '../../../src/language/speak.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { GarmentPhoto } from './garment-photo.tsx';

/** A garment's photo to tick, with its name and a few words below. */
export function PhotoPick({
	garment,
	ticked,
	onFlip,
	children,
}: {
	garment: Garment;
	ticked: boolean;
	onFlip: () => void;
	children?: ReactNode;
}) {
	return (
		<label className="tile pick">
			<span className="pick-photo">
				<GarmentPhoto garment={garment} />
				<input type="checkbox" checked={ticked} onChange={onFlip} />
			</span>
			<span className="tile-name">{garment.name || say('garments.unnamed')}</span>
			<span className="small quiet">{children}</span>
		</label>
	);
}
