import { scaleLinear } from 'd3-scale';
import type { AskedColour, Bands, HeldColour, Thread } from '../../../src/wardrobe/gaps/bands.ts';

/** A stretch of a band, in the drawing's own units from left to right. */
export type Span = { readonly from: number; readonly to: number };

/** A palette colour in the upper band: the covered stretch first, then what hangs loose. */
export type AskedPart = { readonly asked: AskedColour; readonly span: Span; readonly loose: Span };
/** A held colour in the lower band, likewise. */
export type HeldPart = { readonly held: HeldColour; readonly span: Span; readonly loose: Span };
/** A thread with the stretch it takes of either band. */
export type ThreadPart = { readonly thread: Thread; readonly above: Span; readonly below: Span };

export type BandLayout = {
	readonly asked: readonly AskedPart[];
	readonly held: readonly HeldPart[];
	readonly threads: readonly ThreadPart[];
};

/** Amounts under this are rounding of the transport, not cloth. */
const NOTHING = 1e-6;

/** Held colours from left to right: each under what it covers, so that threads cross little; those that cover nothing last. */
function heldInOrder(bands: Bands): HeldColour[] {
	const middleOf = new Map<string, number>();
	let at = 0;
	for (const { paletteColourId, amount } of bands.asked) {
		middleOf.set(paletteColourId, at + amount / 2);
		at += amount;
	}
	const placeOf = ({ id }: HeldColour): number => {
		const own = bands.threads.filter(({ heldId }) => heldId === id);
		const total = own.reduce((sum, { amount }) => sum + amount, 0);
		if (total < NOTHING) return 2;
		return (
			own.reduce((sum, { amount, paletteColourId }) => sum + amount * (middleOf.get(paletteColourId) ?? 1), 0) / total
		);
	};
	return [...bands.held].sort((a, b) => placeOf(a) - placeOf(b) || b.amount - a.amount || (a.id < b.id ? -1 : 1));
}

/**
 * Where everything of the two woven bands lies in a drawing `width` wide. Both bands have the same scale; an empty band has
 * no parts. Threads start and end in the order of their other end.
 */
export function bandLayout(bands: Bands, width: number): BandLayout {
	const x = scaleLinear([0, 1], [0, width]);
	const ordered = heldInOrder(bands);
	const place = new Map(ordered.map(({ id }, index) => [id, index]));
	const askedPlace = new Map(bands.asked.map(({ paletteColourId }, index) => [paletteColourId, index]));
	const above = new Map<Thread, Span>();
	const below = new Map<Thread, Span>();

	let at = 0;
	const asked = bands.asked.map((one): AskedPart => {
		const span = { from: x(at), to: x(at + one.amount) };
		let inner = at;
		const own = bands.threads.filter(
			(thread) => thread.paletteColourId === one.paletteColourId && thread.amount > NOTHING,
		);
		for (const thread of own.sort((a, b) => place.get(a.heldId)! - place.get(b.heldId)!)) {
			above.set(thread, { from: x(inner), to: x(inner + thread.amount) });
			inner += thread.amount;
		}
		at += one.amount;
		return { asked: one, span, loose: { from: x(inner), to: span.to } };
	});
	at = 0;
	const held = ordered.map((one): HeldPart => {
		const span = { from: x(at), to: x(at + one.amount) };
		let inner = at;
		const own = bands.threads.filter((thread) => thread.heldId === one.id && thread.amount > NOTHING);
		for (const thread of own.sort((a, b) => askedPlace.get(a.paletteColourId)! - askedPlace.get(b.paletteColourId)!)) {
			below.set(thread, { from: x(inner), to: x(inner + thread.amount) });
			inner += thread.amount;
		}
		at += one.amount;
		return { held: one, span, loose: { from: x(inner), to: span.to } };
	});
	const threads = [...above].map(([thread, span]) => ({ thread, above: span, below: below.get(thread)! }));
	return { asked, held, threads };
}
