import type { Tensor } from 'onnxruntime-node';

/** The network's own maps of a photo that other networks go on from, by the names in its file. */
export const MAP_NAMES = ['whole', 'seen8', 'seen16', 'deep', 'up16', 'up8', 'up4'] as const;

/** Where the photo lies inside the network's picture: shares of its width and height. */
export type Frame = {
	readonly left: number;
	readonly top: number;
	readonly widthPx: number;
	readonly heightPx: number;
};

/** What the outline network saw in one photo, for networks that go on from there. */
export type OutlineMaps = {
	readonly frame: Frame;
	readonly tensors: Readonly<Record<(typeof MAP_NAMES)[number], Tensor>>;
};
