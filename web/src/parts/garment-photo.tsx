import type { DerivedName } from '../../../src/store/store.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { PhotoTile } from './photo-tile.tsx';

/** A garment's first photo; until it is read there is no picture to ask for. */
export function GarmentPhoto({
	garment,
	picture = 'thumb',
	shape = 'square',
	alt = '',
	eager = false,
}: {
	garment: Pick<Garment, 'photoIds' | 'swatches'>;
	picture?: DerivedName;
	shape?: 'square' | 'tall' | 'free';
	/** '' where the words beside it say the same. */
	alt?: string;
	/** As for {@link PhotoTile}. */
	eager?: boolean;
}) {
	const photoId = garment.swatches.length > 0 ? garment.photoIds[0] : undefined;
	return <PhotoTile photoId={photoId} picture={picture} shape={shape} alt={alt} eager={eager} />;
}
