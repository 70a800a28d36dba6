import { useState } from 'react';
import type { DerivedName } from '../../../src/store/store.ts';
import { usePicture } from '../api/pictures.ts';

/** A photo on mid-grey; until it is read, or without one, a plain weave stands there. */
export function PhotoTile({
	photoId,
	picture = 'thumb',
	alt,
	shape = 'square',
	size,
	eager = false,
}: {
	photoId: string | undefined;
	picture?: DerivedName;
	/** '' where the words beside it say the same. */
	alt: string;
	shape?: 'square' | 'tall' | 'free';
	/** For `free`: the picture's sides, so that its place has its shape before it comes. */
	/** Fetched at once, wherever it stands: paper shows what was fetched. */
	eager?: boolean;
	size?: { readonly widthPx: number; readonly heightPx: number } | null | undefined;
}) {
	const address = usePicture(photoId, picture);
	const [failed, setFailed] = useState<string | null>(null);
	const shown = address !== null && failed !== address;
	return (
		<span
			className={`photo photo-${shape} ${shown ? '' : 'photo-none'}`}
			style={size ? { aspectRatio: `${size.widthPx} / ${size.heightPx}` } : undefined}
		>
			{shown ? (
				<img
					src={address}
					alt={alt}
					loading={eager ? 'eager' : 'lazy'}
					decoding="async"
					onError={() => setFailed(address)}
				/>
			) : (
				<span className="hidden-visually">{alt}</span>
			)}
		</span>
	);
}
