import { type KeyboardEvent, type PointerEvent, type ReactNode, type RefObject, useState } from 'react';

export type Point = { readonly x: number; readonly y: number };

/** Steps of an arrow key, as a share of the longer side: fine, and with Shift coarse. */
const FINE = 0.01;
const COARSE = 0.05;

/**
 * A picture to point into with mouse, finger or keyboard: arrow keys move a cross, Enter or Space does there what a tap does.
 * Points are shares of width and height, 0..1.
 */
export function PicturePointer({
	label,
	surface,
	onTap,
	onStroke,
	onStrokeEnd,
	onUndo,
	marks,
	children,
}: {
	label: string;
	surface: RefObject<HTMLElement | null>;
	onTap: (point: Point) => void;
	/** Called along a drag, with the point before; absent where dragging means nothing. */
	onStroke?: (from: Point, to: Point) => void;
	onStrokeEnd?: () => void;
	onUndo?: () => void;
	/** Points already chosen, drawn as rings. */
	marks?: readonly Point[];
	children: ReactNode;
}) {
	const [cross, setCross] = useState<Point>({ x: 0.5, y: 0.5 });
	const [keyed, setKeyed] = useState(false);
	const [last, setLast] = useState<Point | null>(null);

	const pointOf = (event: PointerEvent): Point | null => {
		const box = surface.current?.getBoundingClientRect();
		if (!box || box.width === 0 || box.height === 0) return null;
		const clamp = (value: number) => Math.min(0.9999, Math.max(0, value));
		return { x: clamp((event.clientX - box.left) / box.width), y: clamp((event.clientY - box.top) / box.height) };
	};
	const onKeyDown = (event: KeyboardEvent) => {
		if ((event.ctrlKey || event.metaKey) && event.key === 'z' && onUndo) {
			event.preventDefault();
			return onUndo();
		}
		const direction = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
		if (direction) {
			event.preventDefault();
			setKeyed(true);
			const size = event.shiftKey ? COARSE : FINE;
			const clamp = (value: number) => Math.min(0.9999, Math.max(0, value));
			setCross({ x: clamp(cross.x + direction[0]! * size), y: clamp(cross.y + direction[1]! * size) });
		}
		if (event.key === 'Enter' || event.key === ' ') {
			event.preventDefault();
			setKeyed(true);
			onTap(cross);
			onStrokeEnd?.();
		}
	};
	const place = ({ x, y }: Point) => ({ left: `${x * 100}%`, top: `${y * 100}%` });
	return (
		<div
			className="pointer"
			role="application"
			// biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the application need focus
			tabIndex={0}
			aria-label={`${label}. Arrow keys move the cross, with Shift in larger steps; Enter does it there.`}
			onKeyDown={onKeyDown}
			onPointerDown={(event) => {
				const point = pointOf(event);
				if (!point) return;
				setKeyed(false);
				setCross(point);
				if (!onStroke) return onTap(point);
				event.currentTarget.setPointerCapture(event.pointerId);
				setLast(point);
				onTap(point);
			}}
			onPointerMove={(event) => {
				const point = last && pointOf(event);
				if (!last || !point || !onStroke) return;
				onStroke(last, point);
				setLast(point);
			}}
			onPointerUp={() => {
				if (last) onStrokeEnd?.();
				setLast(null);
			}}
			onPointerCancel={() => {
				if (last) onStrokeEnd?.();
				setLast(null);
			}}
		>
			<span className="pointer-frame">
				{children}
				{marks?.map((mark) => (
					<span key={`${mark.x} ${mark.y}`} className="pointer-mark" style={place(mark)} />
				))}
				{keyed ? <span className="pointer-cross" style={place(cross)} /> : null}
			</span>
			<span className="hidden-visually" role="status">
				{keyed ? `${Math.round(cross.x * 100)} % from the left, ${Math.round(cross.y * 100)} % from the top` : ''}
			</span>
		</div>
	);
}
