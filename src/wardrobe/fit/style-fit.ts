import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { type Kind, slotOfKind } from '../words/kind.ts';
import { familyOfKind } from '../words/kind-family.ts';
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

const unknown = (axis: AxisFit['axis'], value: number | null, sentence: string): AxisFit => ({
	axis,
	position: 'unknown',
	value,
	sentence,
});

function axisFit(value: number | null, { axis, low, high, photos }: AxisProfile, kind: Kind | null): AxisFit {
	const noun = say(`style.${axis}`);
	if (photos < LEAST_PHOTOS || low === null || high === null)
		return unknown(axis, value, say('style.fewPictures', { least: LEAST_PHOTOS, noun }));
	if (value === null) return unknown(axis, value, say(axis === 'warmth' ? 'style.neutral' : 'style.noColours'));
	const range = Math.max(LEAST_RANGE[axis], high - low);
	const middle = (low + high) / 2;
	const outside = Math.abs(value - middle) - range / 2;
	if (outside <= 0)
		return {
			axis,
			position: 'within',
			value,
			sentence: kind ? say('style.asMostKind', { noun, kind: say(`kinds.${kind}`) }) : say('style.asMost', { noun }),
		};
	const position = outside <= range / 2 ? 'beside' : 'far';
	const than = say(`style.${axis}${value > middle ? 'More' : 'Less'}`);
	const how = position === 'beside' ? 'aLittle' : 'clearly';
	const sentence = kind ? say(`style.${how}Kind`, { than, kind: say(`kinds.${kind}`) }) : say(`style.${how}`, { than });
	return { axis, position, value, sentence };
}

function slotFit(garment: Pick<Garment, 'kind'>, profile: StyleProfile): AxisFit {
	const slot = slotOfKind(garment.kind);
	if (profile.wornPhotos < LEAST_PHOTOS) return unknown('slot', null, say('style.fewPeople', { least: LEAST_PHOTOS }));
	const share = profile.slots[slot];
	const count = Math.round(share * profile.wornPhotos);
	const position = share >= USUAL_FROM_SHARE ? 'within' : share > 0 ? 'beside' : 'far';
	return {
		axis: 'slot',
		position,
		value: share,
		sentence:
			count === 0
				? say('style.slotNever', { slot: say(`slots.${slot}`) })
				: say('style.slotSeen', { count, all: profile.wornPhotos, slot: say(`slots.${slot}`) }),
	};
}

/** A garment's style against the inspirations, axis by axis, in words; never one number. Coats are compared with coats where three pictures or more show them, else with all that is worn. */
export function styleFit(garment: Pick<Garment, 'kind' | 'swatches' | 'pattern'>, profile: StyleProfile): AxisFit[] {
	const values = valuesOf(garment);
	const own = profile.families.find(({ family }) => family === familyOfKind(garment.kind))?.axes ?? [];
	const fits = profile.axes.map((all) => {
		const alike = own.find(({ axis, photos }) => axis === all.axis && photos >= LEAST_PHOTOS);
		return alike ? axisFit(values[all.axis], alike, garment.kind) : axisFit(values[all.axis], all, null);
	});
	return [slotFit(garment, profile), ...fits];
}
