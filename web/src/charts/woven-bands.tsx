import { area, curveBumpY } from 'd3-shape';
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { hexFromLab } from '../../../src/colour/lab65.ts';
import type { Bands } from '../../../src/wardrobe/gaps/bands.ts';
import type { Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { Empty } from '../parts/empty.tsx';
import { type BandLayout, bandLayout, type Span } from './band-layout.ts';
import { askedSentence, heldSentence, threadSentence } from './band-words.ts';
import { BandsTable } from './bands-table.tsx';
import './woven-bands.css';

const WIDTH = 1000;
const FRINGE = 34;
const BAND = 46;
const BETWEEN = 150;
const UPPER = FRINGE;
const LOWER = FRINGE + BAND + BETWEEN;
const HEIGHT = LOWER + BAND + FRINGE;

/** A thread between two stretches, as wide as what it carries. */
const ribbon = area<{ y: number; span: Span }>()
	.y(({ y }) => y)
	.x0(({ span }) => span.from)
	.x1(({ span }) => span.to)
	.curve(curveBumpY);

/** Loose ends: single threads of uneven length that leave the band. */
function Fringe({ span, from, direction, colour }: { span: Span; from: number; direction: -1 | 1; colour: string }) {
	const count = Math.max(1, Math.min(60, Math.floor((span.to - span.from) / 6)));
	if (span.to - span.from < 1) return null;
	const step = (span.to - span.from) / count;
	// A fixed uneven rhythm, so that the same bands always look the same.
	const ends = Array.from({ length: count }, (_, index) => {
		const x = span.from + step * (index + 0.5);
		const length = FRINGE * (0.55 + 0.4 * (((index * 7) % 5) / 5));
		return `M${x} ${from}q${index % 2 ? 3 : -3} ${(direction * length) / 2} 0 ${direction * length}`;
	});
	return <path className="fringe" d={ends.join('')} stroke={colour} />;
}

type Item = { readonly key: string; readonly sentence: string };

function itemsOf(layout: BandLayout, palette: Palette, nameOf: (id: string) => string): Item[] {
	const heldOf = new Map(layout.held.map(({ held }) => [held.id, held]));
	return [
		...layout.asked.map(({ asked }) => ({ key: asked.paletteColourId, sentence: askedSentence(asked, palette) })),
		...layout.threads.map(({ thread }) => ({
			key: `${thread.heldId} ${thread.paletteColourId}`,
			sentence: threadSentence(thread, heldOf.get(thread.heldId)!, palette, nameOf),
		})),
		...layout.held.map(({ held }) => ({ key: held.id, sentence: heldSentence(held, nameOf) })),
	];
}

/**
 * Two woven bands: above what the palette asks for, below what is held, threads where one covers the other; what hangs loose
 * above is a gap, below a surplus. One tab stop, arrow keys go from thread to thread; the same numbers stand in a table.
 */
export function WovenBands({
	bands,
	palette,
	nameOf,
}: {
	bands: Bands;
	palette: Palette;
	nameOf: (id: string) => string;
}) {
	const [chosen, setChosen] = useState<string | null>(null);
	const drawing = useRef<SVGSVGElement>(null);
	const id = useId();
	if (bands.asked.length === 0 && bands.held.length === 0) {
		return (
			<Empty title="Nothing to weave yet">
				<p>The upper band comes from the palette, the lower one from the garments on the rail.</p>
			</Empty>
		);
	}
	const layout = bandLayout(bands, WIDTH);
	const items = itemsOf(layout, palette, nameOf);
	const sentenceOf = new Map(items.map(({ key, sentence }) => [key, sentence]));
	const tabStop = chosen !== null && sentenceOf.has(chosen) ? chosen : items[0]!.key;
	const colourOf = new Map(palette.colours.map((colour) => [colour.id, hexFromLab(colour.lab)]));
	const heldColour = new Map(bands.held.map((held) => [held.id, hexFromLab(held.lab)]));

	const onKeyDown = (event: KeyboardEvent) => {
		const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
		if (!step) return;
		event.preventDefault();
		const at = items.findIndex(({ key }) => key === tabStop);
		const next = items[(at + step + items.length) % items.length]!.key;
		drawing.current?.querySelector<SVGElement>(`[data-key="${CSS.escape(next)}"]`)?.focus();
	};
	const handles = (key: string) => ({
		'data-key': key,
		'data-chosen': chosen === key,
		role: 'button',
		tabIndex: key === tabStop ? 0 : -1,
		'aria-label': sentenceOf.get(key)!,
		onKeyDown,
		onFocus: () => setChosen(key),
		onPointerEnter: () => setChosen(key),
		onClick: () => setChosen(key),
	});
	const partOf = (key: string, other: string) =>
		chosen === null || chosen === key || chosen === other || chosen === `${other} ${key}`;
	const lit = (heldId: string, colourId: string) => partOf(colourId, heldId);

	return (
		<figure className="bands">
			<div className="bands-labels small">
				<span>Asked for by the palette</span>
				<span className="quiet">loose above: a gap</span>
			</div>
			<svg
				ref={drawing}
				viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
				preserveAspectRatio="none"
				aria-label="Threads between what is asked for and what is held"
			>
				<defs>
					<pattern id={`${id}-weave`} width="8" height="8" patternUnits="userSpaceOnUse">
						<path d="M0 2H4M4 6H8" stroke="rgb(0 0 0 / 11%)" strokeWidth="2" />
						<path d="M2 4V8M6 0V4" stroke="rgb(255 255 255 / 11%)" strokeWidth="2" />
					</pattern>
				</defs>
				{layout.threads.map(({ thread, above, below }) => (
					<g
						key={`${thread.heldId} ${thread.paletteColourId}`}
						className="thread"
						data-lit={lit(thread.heldId, thread.paletteColourId)}
						{...handles(`${thread.heldId} ${thread.paletteColourId}`)}
					>
						<path
							d={
								ribbon([
									{ y: UPPER + BAND, span: above },
									{ y: LOWER, span: below },
								])!
							}
							fill={heldColour.get(thread.heldId)}
						/>
					</g>
				))}
				{layout.asked.map(({ asked, span, loose }) => (
					<g key={asked.paletteColourId} className="cloth" {...handles(asked.paletteColourId)}>
						<Fringe span={loose} from={UPPER} direction={-1} colour={colourOf.get(asked.paletteColourId) ?? 'none'} />
						<rect
							x={span.from}
							y={UPPER}
							width={Math.max(0, span.to - span.from)}
							height={BAND}
							fill={colourOf.get(asked.paletteColourId)}
						/>
						<rect
							x={span.from}
							y={UPPER}
							width={Math.max(0, span.to - span.from)}
							height={BAND}
							fill={`url(#${id}-weave)`}
						/>
					</g>
				))}
				{layout.held.map(({ held, span, loose }) => (
					<g key={held.id} className="cloth" {...handles(held.id)}>
						<Fringe span={loose} from={LOWER + BAND} direction={1} colour={heldColour.get(held.id)!} />
						<rect
							x={span.from}
							y={LOWER}
							width={Math.max(0, span.to - span.from)}
							height={BAND}
							fill={heldColour.get(held.id)}
						/>
						<rect
							x={span.from}
							y={LOWER}
							width={Math.max(0, span.to - span.from)}
							height={BAND}
							fill={`url(#${id}-weave)`}
						/>
					</g>
				))}
			</svg>
			<div className="bands-labels small">
				<span>Held by your garments</span>
				<span className="quiet">loose below: a surplus</span>
			</div>
			<figcaption id={`${id}-caption`} className="bands-told">
				{chosen !== null && sentenceOf.has(chosen)
					? sentenceOf.get(chosen)
					: 'Point at a thread or a stretch of cloth, tap it, or reach it with the arrow keys, and it says what it is.'}
			</figcaption>
			<details>
				<summary>The same as a table</summary>
				<BandsTable bands={bands} palette={palette} nameOf={nameOf} />
			</details>
		</figure>
	);
}
