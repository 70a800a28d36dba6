import { type PointerEvent, useRef } from 'react';
import { say } from '../../../src/language/speak.ts';
import { Field } from '../parts/field.tsx';

/** A rectangle in shares of the picture's width and height, 0..1. */
export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

const LEAST = 0.05;

const EDGES = {
	left: 'photo.edgeLeft',
	right: 'photo.edgeRight',
	top: 'photo.edgeTop',
	bottom: 'photo.edgeBottom',
} as const;

type Choosing = { readonly box: Box; readonly onChange: (box: Box) => void };

/** One edge of the rectangle as a slider; it stays a little away from the edge across. */
function Edge({ side, box, onChange }: Choosing & { readonly side: keyof Box }) {
	const [least, most] = {
		left: [0, box.right - LEAST],
		right: [box.left + LEAST, 1],
		top: [0, box.bottom - LEAST],
		bottom: [box.top + LEAST, 1],
	}[side] as [number, number];
	return (
		<Field label={say(EDGES[side], { percent: Math.round(box[side] * 100) })}>
			{(ids) => (
				<input
					{...ids}
					type="range"
					min={0}
					max={100}
					value={Math.round(box[side] * 100)}
					onChange={({ target }) =>
						onChange({ ...box, [side]: Math.min(most, Math.max(least, Number(target.value) / 100)) })
					}
				/>
			)}
		</Field>
	);
}

/** What drags on the frame do: each draws the rectangle anew. */
function useDrag({ onChange }: Choosing) {
	const frame = useRef<HTMLDivElement>(null);
	const start = useRef<{ x: number; y: number } | null>(null);
	const at = ({ clientX, clientY }: PointerEvent) => {
		const { left, top, width, height } = frame.current!.getBoundingClientRect();
		const clamp = (value: number) => Math.min(1, Math.max(0, value));
		return { x: clamp((clientX - left) / width), y: clamp((clientY - top) / height) };
	};
	return {
		ref: frame,
		onPointerDown: (event: PointerEvent) => {
			start.current = at(event);
			event.currentTarget.setPointerCapture(event.pointerId);
		},
		onPointerMove: (event: PointerEvent) => {
			if (!start.current) return;
			const { x, y } = at(event);
			const { x: x0, y: y0 } = start.current;
			if (Math.abs(x - x0) < LEAST || Math.abs(y - y0) < LEAST) return;
			onChange({ left: Math.min(x, x0), right: Math.max(x, x0), top: Math.min(y, y0), bottom: Math.max(y, y0) });
		},
		onPointerUp: () => {
			start.current = null;
		},
	};
}

/** A picture with one rectangle on it: drag to draw it, or move its four edges by keyboard. */
export function BoxChooser({ address, label, ...choosing }: Choosing & { address: string; label: string }) {
	const { box } = choosing;
	const mark = {
		left: `${box.left * 100}%`,
		top: `${box.top * 100}%`,
		width: `${(box.right - box.left) * 100}%`,
		height: `${(box.bottom - box.top) * 100}%`,
	};
	return (
		<div className="stack">
			<div className="box-frame" {...useDrag(choosing)}>
				<img src={address} alt={label} draggable={false} />
				<span className="box-mark" style={mark} />
			</div>
			<div className="fields">
				<Edge side="left" {...choosing} />
				<Edge side="right" {...choosing} />
				<Edge side="top" {...choosing} />
				<Edge side="bottom" {...choosing} />
			</div>
		</div>
	);
}
