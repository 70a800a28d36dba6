import { useEffect, useRef, useState } from 'react';
import { growRegion } from '../../../src/colour/region.ts';
import { say } from '../../../src/language/speak.ts';
import { Button } from '../parts/button.tsx';
import { Choices } from '../parts/choices.tsx';
import { percentText } from '../parts/colour-text.ts';
import { Field } from '../parts/field.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { clothesShare, paintDisc, paintStroke, withRegion, withStroke } from './mask-edit.ts';
import { drawOutline } from './outline-drawing.ts';
import { PicturePointer, type Point } from './picture-pointer.tsx';
import type { Outline } from './use-outline.ts';

const TOOLS = ['take', 'drop', 'brush', 'rub'] as const;
type Tool = (typeof TOOLS)[number];

/** What a tap and a stroke do to the outline with a tool in hand. */
type InHand = { readonly tool: Tool; readonly tolerance: number; readonly radius: number };

/** The canvas of an outline, and what happens on it. A stroke is painted as it goes and counts as one step. */
function useDrawing({ loaded, edit, change }: Outline, { tool, tolerance, radius }: InHand) {
	const canvas = useRef<HTMLCanvasElement>(null);
	const stroke = useRef<Uint8Array | null>(null);
	const takes = tool === 'take' || tool === 'brush';
	const brushes = tool === 'brush' || tool === 'rub';
	const draw = (mask: Uint8Array) => {
		if (canvas.current && loaded && edit) drawOutline(canvas.current, loaded.picture, mask, edit);
	};
	useEffect(() => {
		if (canvas.current && loaded && edit) drawOutline(canvas.current, loaded.picture, edit.mask, edit);
	}, [loaded, edit]);
	const inPixels = ({ x, y }: Point) => ({
		x: Math.floor(x * (edit?.width ?? 1)),
		y: Math.floor(y * (edit?.height ?? 1)),
	});
	const onTap = (point: Point) => {
		if (!loaded || !edit) return;
		const at = inPixels(point);
		if (!brushes) return change(withRegion(edit, growRegion(loaded.labs, at.x, at.y, { tolerance }), takes));
		stroke.current ??= edit.mask.slice();
		paintDisc(stroke.current, edit, at.x, at.y, radius, takes);
		draw(stroke.current);
	};
	const onStroke = (from: Point, to: Point) => {
		if (!stroke.current || !edit) return;
		paintStroke(stroke.current, edit, inPixels(from), inPixels(to), radius, takes);
		draw(stroke.current);
	};
	const onStrokeEnd = () => {
		if (stroke.current && edit) change(withStroke(edit, stroke.current));
		stroke.current = null;
	};
	return { canvas, onTap, onStrokeEnd, ...(brushes ? { onStroke } : {}) };
}

function Size({
	label,
	min,
	max,
	value,
	onChange,
}: {
	label: string;
	min: number;
	max: number;
	value: number;
	onChange: (value: number) => void;
}) {
	return (
		<Field label={label}>
			{(ids) => (
				<input
					{...ids}
					type="range"
					min={min}
					max={max}
					value={value}
					onChange={(event) => onChange(Number(event.target.value))}
				/>
			)}
		</Field>
	);
}

/** Keeping what was drawn, always in view while the rest scrolls. */
function KeepBar({ outline }: { outline: Outline }) {
	const { isDrawn, isKeeping, byHand } = outline;
	return (
		<div className="row keep-bar">
			<Button look="main" onPress={outline.keep} isPending={isKeeping} isDisabled={!isDrawn}>
				{say(isKeeping ? 'outline.keeping' : 'outline.keep')}
			</Button>
			<Button onPress={outline.undo} isDisabled={!isDrawn}>
				{say('outline.back')}
			</Button>
			{byHand ? (
				<Button onPress={outline.forget} isPending={outline.isForgetting}>
					{say('outline.forget')}
				</Button>
			) : null}
		</div>
	);
}

/** The outline taken as clothes, drawn over the photo; a tap takes or drops a whole region, a brush does the rest. */
export function OutlineEditor({ outline }: { outline: Outline }) {
	const [hand, setHand] = useState<InHand>({ tool: 'take', tolerance: 10, radius: 14 });
	const { canvas, ...drawing } = useDrawing(outline, hand);
	const { loaded, edit, failure, isDrawn } = outline;
	useEffect(() => {
		// What was drawn is kept, and the button that had the focus takes none now: the keys go on at the picture.
		if (!isDrawn && document.activeElement === document.body)
			canvas.current?.closest<HTMLElement>('[role="application"]')?.focus({ preventScroll: true });
	}, [isDrawn, canvas]);
	if (failure) return <Problem of={failure} />;
	if (!loaded || !edit) return <Loading what={say('outline.loading')} />;
	const { tool, tolerance, radius } = hand;
	return (
		<div className="stack">
			<Choices
				label={say('outline.tapDoes')}
				value={tool}
				options={TOOLS.map((one) => [one, say(`outline.${one}`)] as const)}
				small
				onChange={(next) => setHand({ ...hand, tool: next })}
			/>
			<PicturePointer label={say('outline.picture')} surface={canvas} onUndo={outline.undo} {...drawing}>
				<canvas ref={canvas} className="pointer-picture" />
			</PicturePointer>
			<KeepBar outline={outline} />
			{tool === 'brush' || tool === 'rub' ? (
				<Size
					label={say('outline.brushWidth', { pixels: radius * 2 })}
					min={3}
					max={50}
					value={radius}
					onChange={(next) => setHand({ ...hand, radius: next })}
				/>
			) : (
				<Size
					label={say('outline.tolerance', { tolerance })}
					min={2}
					max={40}
					value={tolerance}
					onChange={(next) => setHand({ ...hand, tolerance: next })}
				/>
			)}
			<p className="small quiet" role="status">
				{say('outline.share', { percent: percentText(clothesShare(edit)) })}
			</p>
			<Problem of={outline.problem} />
		</div>
	);
}
