import { type KeyboardEvent, type PointerEvent, type ReactNode, type RefObject, useState } from 'react';
import { say } from '../../../src/language/speak.ts';

export type Point = { readonly x: number; readonly y: number };

/** Steps of an arrow key, as a share of the longer side: fine, and with Shift coarse. */
const FINE = 0.01;
const COARSE = 0.05;

type Pointing = {
	readonly surface: RefObject<HTMLElement | null>;
	readonly onTap: (point: Point) => void;
	/** Called along a drag, with the point before; absent where dragging means nothing. */
	readonly onStroke?: (from: Point, to: Point) => void;
	readonly onStrokeEnd?: () => void;
	readonly onUndo?: () => void;
};

const DIRECTIONS: Readonly<Record<string, readonly [number, number]>> = {
	ArrowLeft: [-1, 0],
	ArrowRight: [1, 0],
	ArrowUp: [0, -1],
	ArrowDown: [0, 1],
};

const within = (value: number) => Math.min(0.9999, Math.max(0, value));

/** Where a pointer is on the surface, or null where the surface is not laid out. */
function pointOf(event: PointerEvent, surface: HTMLElement | null): Point | null {
	const box = surface?.getBoundingClientRect();
	if (!box || box.width === 0 || box.height === 0) return null;
	return { x: within((event.clientX - box.left) / box.width), y: within((event.clientY - box.top) / box.height) };
}

/** The cross that the keys move: where it is, whether keys moved it last, and what the keys do. */
function useCross({ onTap, onStrokeEnd, onUndo }: Pointing) {
	const [cross, setCross] = useState<Point>({ x: 0.5, y: 0.5 });
	const [keyed, setKeyed] = useState(false);
	const onKeyDown = (event: KeyboardEvent) => {
		const direction = DIRECTIONS[event.key];
		const isUndo = (event.ctrlKey || event.metaKey) && event.key === 'z' && onUndo;
		const isTap = event.key === 'Enter' || event.key === ' ';
		if (!direction && !isUndo && !isTap) return;
		event.preventDefault();
		if (isUndo) return onUndo();
		setKeyed(true);
		if (direction) {
			const size = event.shiftKey ? COARSE : FINE;
			setCross({ x: within(cross.x + direction[0] * size), y: within(cross.y + direction[1] * size) });
			return;
		}
		onTap(cross);
		onStrokeEnd?.();
	};
	const moveTo = (point: Point) => {
		setKeyed(false);
		setCross(point);
	};
	return { cross, keyed, onKeyDown, moveTo };
}

/** What a mouse or finger does: a tap, or a stroke from point to point. */
function useStrokes({ surface, onTap, onStroke, onStrokeEnd }: Pointing, moveTo: (point: Point) => void) {
	const [last, setLast] = useState<Point | null>(null);
	const end = () => {
		if (last) onStrokeEnd?.();
		setLast(null);
	};
	return {
		onPointerDown: (event: PointerEvent) => {
			const point = pointOf(event, surface.current);
			if (!point) return;
			moveTo(point);
			if (onStroke) {
				event.currentTarget.setPointerCapture(event.pointerId);
				setLast(point);
			}
			onTap(point);
		},
		onPointerMove: (event: PointerEvent) => {
			const point = last && pointOf(event, surface.current);
			if (!last || !point || !onStroke) return;
			onStroke(last, point);
			setLast(point);
		},
		onPointerUp: end,
		onPointerCancel: end,
	};
}

/**
 * A picture to point into with mouse, finger or keyboard: arrow keys move a cross, Enter or Space does there what a tap does.
 * Points are shares of width and height, 0..1.
 */
export function PicturePointer({
	label,
	marks,
	children,
	...pointing
}: Pointing & {
	label: string;
	/** Points already chosen, drawn as rings. */
	marks?: readonly Point[];
	children: ReactNode;
}) {
	const { cross, keyed, onKeyDown, moveTo } = useCross(pointing);
	const strokes = useStrokes(pointing, moveTo);
	const place = ({ x, y }: Point) => ({ left: `${x * 100}%`, top: `${y * 100}%` });
	return (
		<div
			className="pointer"
			role="application"
			// biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the application need focus
			tabIndex={0}
			aria-label={say('photo.keys', { label })}
			onKeyDown={onKeyDown}
			{...strokes}
		>
			<span className="pointer-frame">
				{children}
				{marks?.map((mark) => (
					<span key={`${mark.x} ${mark.y}`} className="pointer-mark" style={place(mark)} />
				))}
				{keyed ? <span className="pointer-cross" style={place(cross)} /> : null}
			</span>
			<span className="hidden-visually" role="status">
				{keyed ? say('photo.crossAt', { x: Math.round(cross.x * 100), y: Math.round(cross.y * 100) }) : ''}
			</span>
		</div>
	);
}
