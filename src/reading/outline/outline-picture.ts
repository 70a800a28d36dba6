/** Where the photo lies inside a network's picture: shares of its width and height. */
export type Frame = {
	readonly left: number;
	readonly top: number;
	readonly widthPx: number;
	readonly heightPx: number;
};

/** The picture that the outline network was shown of a photo, for networks that look at it too. */
export type OutlinePicture = {
	readonly frame: Frame;
	/** Three bytes a pixel, row by row, at the network's own size. */
	readonly rgb: Uint8Array;
	readonly widthPx: number;
	readonly heightPx: number;
};
