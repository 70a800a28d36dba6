import { useState } from 'react';
import type { DerivedName } from '../../../src/store/store.ts';
import { usePicture } from '../api/pictures.ts';

/** A photo on mid-grey; until it is read, or without one, a plain weave stands there. */
export function PhotoTile({
	photoId,
	picture = 'thumb',
	alt,
	shape = 'square',
}: {
	photoId: string | undefined;
	picture?: DerivedName;
	/** '' where the words beside it say the same. */
	alt: string;
	shape?: 'square' | 'tall' | 'free';
}) {
	const address = usePicture(photoId, picture);
	const [failed, setFailed] = useState<string | null>(null);
	const shown = address !== null && failed !== address;
	return (
		<span className={`photo photo-${shape} ${shown ? '' : 'photo-none'}`}>
			{shown ? (
				<img src={address} alt={alt} loading="lazy" decoding="async" onError={() => setFailed(address)} />
			) : (
				<span className="hidden-visually">{alt}</span>
			)}
		</span>
	);
}
