import type { Garment } from '../words/garment.ts';
import { KINDS, slotOfKind } from '../words/kind.ts';
import type { AxisProfile, StyleProfile } from './style.ts';
import { type StyleAxis, valuesOf } from './style-axes.ts';

/** How one garment lies on one axis of the inspirations. */
export type AxisFit = {
	readonly axis: StyleAxis | 'slot';
	/** `within` the middle 80 % of the pictures, `beside` up to half that range outside it, `far` beyond; `unknown` where either side does not tell. */
	readonly position: 'within' | 'beside' | 'far' | 'unknown';
	readonly value: number | null;
	readonly sentence: string;
};

/** Fewer pictures than this give no range worth comparing with. Common practice, no source. */
const LEAST_PHOTOS = 3;

/** A slot is usual when at least this share of the pictures shows it. Common practice, no source. */
const USUAL_FROM_SHARE = 0.2;

/** A range is taken at least this wide: about what two photos of one garment differ by (L* and C* about 6; see the figures for phone photos). */
const LEAST_RANGE: Readonly<Record<StyleAxis, number>> = { lightness: 12, vividness: 12, warmth: 0.5, pattern: 0.5 };

/** Words for less and more of each axis, and for the middle. */
const WORDS: Readonly<Record<StyleAxis, { readonly less: string; readonly more: string; readonly noun: string }>> = {
	lightness: { less: 'deeper', more: 'lighter', noun: 'light or deep' },
	vividness: { less: 'softer', more: 'more vivid', noun: 'soft or vivid' },
	warmth: { less: 'cooler', more: 'warmer', noun: 'warm or cool' },
	pattern: { less: 'plainer', more: 'more patterned', noun: 'plain or patterned' },
};

const unknown = (axis: AxisFit['axis'], value: number | null, sentence: string): AxisFit => ({
	axis,
	position: 'unknown',
	value,
	sentence,
});

function axisFit(value: number | null, { axis, low, high, photos }: AxisProfile): AxisFit {
	const { less, more, noun } = WORDS[axis];
	if (photos < LEAST_PHOTOS || low === null || high === null)
		return unknown(axis, value, `Fewer than ${LEAST_PHOTOS} pictures show how ${noun} the season is.`);
	if (value === null)
		return unknown(
			axis,
			value,
			axis === 'warmth' ? 'It is neutral, so neither warm nor cool.' : 'Its photos have given no colours yet.',
		);
	const range = Math.max(LEAST_RANGE[axis], high - low);
	const middle = (low + high) / 2;
	const outside = Math.abs(value - middle) - range / 2;
	if (outside <= 0) return { axis, position: 'within', value, sentence: `It is as ${noun} as most pictures.` };
	const position = outside <= range / 2 ? 'beside' : 'far';
	const how = position === 'beside' ? 'a little' : 'clearly';
	return { axis, position, value, sentence: `It is ${how} ${value > middle ? more : less} than most pictures.` };
}

function slotFit(garment: Pick<Garment, 'kind'>, profile: StyleProfile): AxisFit {
	const slot = slotOfKind(garment.kind);
	const { label } = KINDS[garment.kind];
	if (profile.wornPhotos < LEAST_PHOTOS)
		return unknown('slot', null, `Fewer than ${LEAST_PHOTOS} pictures show people, so they do not say what is worn.`);
	const share = profile.slots[slot];
	const count = Math.round(share * profile.wornPhotos);
	const position = share >= USUAL_FROM_SHARE ? 'within' : share > 0 ? 'beside' : 'far';
	return {
		axis: 'slot',
		position,
		value: share,
		sentence:
			count === 0
				? `No picture shows a piece worn where this ${label} is (${slot}).`
				: `${count} of ${profile.wornPhotos} pictures show a piece worn where this ${label} is (${slot}).`,
	};
}

/** A garment's style against the inspirations, axis by axis, in words; never one number. */
export function styleFit(garment: Pick<Garment, 'kind' | 'swatches' | 'pattern'>, profile: StyleProfile): AxisFit[] {
	const values = valuesOf(garment);
	return [slotFit(garment, profile), ...profile.axes.map((axis) => axisFit(values[axis.axis], axis))];
}
