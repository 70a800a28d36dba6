import { useRef } from 'react';
import { Field } from '../parts/field.tsx';

/** A rectangle in shares of the picture's width and height, 0..1. */
export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

const LEAST = 0.05;

/** A picture with one rectangle on it: drag to draw it, or move its four edges by keyboard. */
export function BoxChooser({
	address,
	box,
	label,
	onChange,
}: {
	address: string;
	box: Box;
	label: string;
	onChange: (box: Box) => void;
}) {
	const frame = useRef<HTMLDivElement>(null);
	const start = useRef<{ x: number; y: number } | null>(null);
	const at = (clientX: number, clientY: number) => {
		const { left, top, width, height } = frame.current!.getBoundingClientRect();
		const clamp = (value: number) => Math.min(1, Math.max(0, value));
		return { x: clamp((clientX - left) / width), y: clamp((clientY - top) / height) };
	};
	const edge = (key: keyof Box, name: string, min: number, max: number) => (
		<Field label={`${name} edge: ${Math.round(box[key] * 100)} %`}>
			{(ids) => (
				<input
					{...ids}
					type="range"
					min={0}
					max={100}
					value={Math.round(box[key] * 100)}
					onChange={(event) =>
						onChange({ ...box, [key]: Math.min(max, Math.max(min, Number(event.target.value) / 100)) })
					}
				/>
			)}
		</Field>
	);
	return (
		<div className="stack">
			<div
				ref={frame}
				className="box-frame"
				onPointerDown={(event) => {
					start.current = at(event.clientX, event.clientY);
					event.currentTarget.setPointerCapture(event.pointerId);
				}}
				onPointerMove={(event) => {
					if (!start.current) return;
					const { x, y } = at(event.clientX, event.clientY);
					const { x: x0, y: y0 } = start.current;
					if (Math.abs(x - x0) < LEAST || Math.abs(y - y0) < LEAST) return;
					onChange({ left: Math.min(x, x0), right: Math.max(x, x0), top: Math.min(y, y0), bottom: Math.max(y, y0) });
				}}
				onPointerUp={() => {
					start.current = null;
				}}
			>
				<img src={address} alt={label} draggable={false} />
				<span
					className="box-mark"
					style={{
						left: `${box.left * 100}%`,
						top: `${box.top * 100}%`,
						width: `${(box.right - box.left) * 100}%`,
						height: `${(box.bottom - box.top) * 100}%`,
					}}
				/>
			</div>
			<div className="fields">
				{edge('left', 'Left', 0, box.right - LEAST)}
				{edge('right', 'Right', box.left + LEAST, 1)}
				{edge('top', 'Upper', 0, box.bottom - LEAST)}
				{edge('bottom', 'Lower', box.top + LEAST, 1)}
			</div>
		</div>
	);
}
