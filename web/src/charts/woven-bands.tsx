import { area, curveBumpY } from 'd3-shape';
import { type KeyboardEvent, type SVGProps, useId, useRef, useState } from 'react';
import { hexFromLab } from '../../../src/colour/lab65.ts';
import { say } from '../../../src/language/speak.ts';
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

/** What makes a part of the drawing reachable: one tab stop, arrow keys go from part to part. */
type Handles = (
	key: string,
) => SVGProps<SVGGElement> & { readonly 'data-key': string; readonly 'data-chosen': boolean };

/** The part that is pointed at, and the handles that say so; `null` before any is. */
function useChosenPart(items: readonly Item[]) {
	const [chosen, setChosen] = useState<string | null>(null);
	const drawing = useRef<SVGSVGElement>(null);
	const sentenceOf = new Map(items.map(({ key, sentence }) => [key, sentence]));
	const tabStop = chosen !== null && sentenceOf.has(chosen) ? chosen : items[0]?.key;
	const onKeyDown = (event: KeyboardEvent) => {
		const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
		if (!step) return;
		event.preventDefault();
		const at = items.findIndex(({ key }) => key === tabStop);
		const next = items[(at + step + items.length) % items.length]!.key;
		drawing.current?.querySelector<SVGElement>(`[data-key="${CSS.escape(next)}"]`)?.focus();
	};
	const handles: Handles = (key) => ({
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
	return { chosen, drawing, handles, told: chosen === null ? undefined : sentenceOf.get(chosen) };
}

/** A stretch of one of the two bands, its loose end hanging out. */
function Cloth({
	span,
	loose,
	colour,
	weave,
	isUpper,
	handles,
}: {
	span: Span;
	loose: Span;
	colour: string | undefined;
	weave: string;
	isUpper: boolean;
	handles: ReturnType<Handles>;
}) {
	const [top, edge] = isUpper ? [UPPER, UPPER] : [LOWER, LOWER + BAND];
	const width = Math.max(0, span.to - span.from);
	return (
		<g className="cloth" {...handles}>
			<Fringe span={loose} from={edge} direction={isUpper ? -1 : 1} colour={colour ?? 'none'} />
			<rect x={span.from} y={top} width={width} height={BAND} fill={colour} />
			<rect x={span.from} y={top} width={width} height={BAND} fill={`url(#${weave})`} />
		</g>
	);
}

/** The threads between the bands; those that the chosen part has nothing to do with step back. */
function Threads({
	layout,
	colourOf,
	chosen,
	handles,
}: {
	layout: BandLayout;
	colourOf: ReadonlyMap<string, string>;
	chosen: string | null;
	handles: Handles;
}) {
	return layout.threads.map(({ thread: { heldId, paletteColourId }, above, below }) => {
		const key = `${heldId} ${paletteColourId}`;
		const lit = chosen === null || [paletteColourId, heldId, key].includes(chosen);
		const ends = [
			{ y: UPPER + BAND, span: above },
			{ y: LOWER, span: below },
		];
		return (
			<g key={key} className="thread" data-lit={lit} {...handles(key)}>
				<path d={ribbon(ends)!} fill={colourOf.get(heldId)} />
			</g>
		);
	});
}

/** Crossing threads, light and dark, that lie over every stretch of cloth. */
function Weave({ id }: { id: string }) {
	return (
		<defs>
			<pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse">
				<path d="M0 2H4M4 6H8" stroke="rgb(0 0 0 / 11%)" strokeWidth="2" />
				<path d="M2 4V8M6 0V4" stroke="rgb(255 255 255 / 11%)" strokeWidth="2" />
			</pattern>
		</defs>
	);
}

type Shown = { bands: Bands; palette: Palette; nameOf: (id: string) => string };

/**
 * Two woven bands: above what the palette asks for, below what is held, threads where one covers the other; what hangs loose
 * above is a gap, below a surplus. One tab stop, arrow keys go from thread to thread; the same numbers stand in a table.
 */
export function WovenBands(shown: Shown) {
	const { asked, held } = shown.bands;
	if (asked.length + held.length > 0) return <Drawing {...shown} />;
	return (
		<Empty title={say('bands.none')}>
			<p>{say('bands.noneHow')}</p>
		</Empty>
	);
}

function Drawing({ bands, palette, nameOf }: Shown) {
	const layout = bandLayout(bands, WIDTH);
	const { chosen, drawing, handles, told } = useChosenPart(itemsOf(layout, palette, nameOf));
	const id = useId();
	const weave = `${id}-weave`;
	const colourOf = new Map([...palette.colours, ...bands.held].map(({ id: key, lab }) => [key, hexFromLab(lab)]));
	return (
		<figure className="bands">
			<div className="bands-labels small">
				<span>{say('bands.askedTitle')}</span>
				<span className="quiet">{say('bands.looseAbove')}</span>
			</div>
			<svg ref={drawing} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-label={say('bands.label')}>
				<Weave id={weave} />
				<Threads layout={layout} colourOf={colourOf} chosen={chosen} handles={handles} />
				{layout.asked.map(({ asked: { paletteColourId: key }, span, loose }) => (
					<Cloth key={key} isUpper colour={colourOf.get(key)} {...{ span, loose, weave }} handles={handles(key)} />
				))}
				{layout.held.map(({ held: { id: key }, span, loose }) => (
					<Cloth
						key={key}
						isUpper={false}
						colour={colourOf.get(key)}
						{...{ span, loose, weave }}
						handles={handles(key)}
					/>
				))}
			</svg>
			<div className="bands-labels small">
				<span>{say('bands.heldTitle')}</span>
				<span className="quiet">{say('bands.looseBelow')}</span>
			</div>
			<figcaption id={`${id}-caption`} className="bands-told">
				{told ?? say('bands.how')}
			</figcaption>
			<details>
				<summary>{say('bands.asTable')}</summary>
				<BandsTable bands={bands} palette={palette} nameOf={nameOf} />
			</details>
		</figure>
	);
}
