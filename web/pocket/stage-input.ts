import type { Point } from './photo-view.ts';

/** Pixels that an arrow key moves the cross by, alone and with Shift. */
const STEP = 4;
const LARGE_STEP = 20;

const DIRECTIONS: Readonly<Record<string, readonly [number, number]>> = {
	ArrowLeft: [-1, 0],
	ArrowRight: [1, 0],
	ArrowUp: [0, -1],
	ArrowDown: [0, 1],
};

type Told = {
	/** A finger or mouse came down at a pixel of the canvas. */
	readonly tap: (at: Point) => void;
	/** An arrow key asked to move the cross. */
	readonly move: (x: number, y: number) => void;
	/** Enter or Space: a tap where the cross is. */
	readonly enter: () => void;
};

/** Tells of taps on the canvas and of keys on its stage. */
export function listenToStage(stage: HTMLElement, canvas: HTMLCanvasElement, told: Told): void {
	canvas.addEventListener('pointerdown', ({ clientX, clientY }) => {
		const { left, top, width, height } = canvas.getBoundingClientRect();
		const pixelAt = (share: number, pixels: number) => Math.min(pixels - 1, Math.max(0, Math.floor(share * pixels)));
		told.tap({
			x: pixelAt((clientX - left) / width, canvas.width),
			y: pixelAt((clientY - top) / height, canvas.height),
		});
	});
	stage.addEventListener('keydown', (event) => {
		const direction = DIRECTIONS[event.key];
		const step = event.shiftKey ? LARGE_STEP : STEP;
		if (direction) told.move(direction[0] * step, direction[1] * step);
		else if (event.key === 'Enter' || event.key === ' ') told.enter();
		else return;
		event.preventDefault();
	});
}
