import { basicTermsOf } from '../../colour/words/find-colour.ts';
import { say, spokenLanguage } from '../../language/speak.ts';
import type { GarmentDetails } from './garment.ts';
import { seenSwatches } from './main-colour.ts';
import { looksPlain } from './plain-looking.ts';
import type { Appearance, Swatch } from './reading.ts';
import { saidColour } from './said-colour.ts';

/** What a garment's own name is made of. */
export type Nameable = Appearance & Pick<GarmentDetails, 'kind' | 'kindFrom'>;

/** A pattern is named from this probability on: naming a wrong one misleads more than naming none. Two in three, our choice. */
const PATTERN_NAMED_FROM = 2 / 3;

/** A second colour is named from this share of the cloth on: about what stripes or a check of two colours have of it. Common practice, no source. */
const SECOND_COLOUR_FROM = 0.25;

const wordOf = ({ lab }: Swatch, error: number): string => saidColour(lab, error);

/** Patterns that a name says; mottled cloth is called by its colour. */
function patternWord(pattern: Appearance['pattern']): string | null {
	return looksPlain(pattern) || pattern.sure < PATTERN_NAMED_FROM ? null : say(`patterns.${pattern.type}`);
}

/** The colour of patterned cloth: "navy and white" where a second colour has a good part of it and is another one to anybody. */
function patternedColour(swatches: readonly Swatch[], error: number): string {
	const [first, second] = [...swatches].sort((one, other) => other.share - one.share);
	const colour = wordOf(first!, error);
	if (!second || second.share < SECOND_COLOUR_FROM) return colour;
	const other = wordOf(second, error);
	const language = spokenLanguage();
	if (basicTermsOf(other, language)[0] === basicTermsOf(colour, language)[0]) return colour;
	return say('garmentNames.twoColours', { colour, second: other });
}

/**
 * What a garment is called where nobody named it: colour, pattern and kind, "navy checked shirt", in the language spoken. Without colours the kind alone;
 * without a kind "piece".
 */
export function garmentName(garment: Nameable): string {
	const kind = say(garment.kindFrom === 'none' ? 'kinds.unknown' : `kinds.${garment.kind}`);
	const seen = seenSwatches(garment);
	if (seen.length === 0) return say('garmentNames.noColour', { kind });
	const { error } = garment.trust;
	const pattern = patternWord(garment.pattern);
	if (pattern === null) {
		const main = seen.reduce((most, swatch) => (swatch.share > most.share ? swatch : most));
		return say('garmentNames.plain', { colour: wordOf(main, error), kind });
	}
	return say('garmentNames.patterned', { colour: patternedColour(seen, error), pattern, kind });
}

/** The name for the `place`th thing, 1 the first, of those that would be called the same. */
export function nameAmongEqual(name: string, place: number): string {
	if (place === 1) return name;
	if (place === 2) return say('garmentNames.other', { name });
	if (place === 3) return say('garmentNames.third', { name });
	if (place === 4) return say('garmentNames.fourth', { name });
	return say('garmentNames.later', { name, place });
}

type Named = Nameable & Pick<GarmentDetails, 'id' | 'name' | 'nameFrom' | 'addedAt'>;

/**
 * The garments with their names: a name given by hand stays, all others are called by their looks, told apart in the order in which they came ("red
 * jacket", "red jacket (the other)"). The order of the list is kept.
 */
export function withNames<T extends Named>(garments: readonly T[]): T[] {
	const taken = new Set(garments.filter(({ nameFrom }) => nameFrom === 'user').map(({ name }) => name));
	const places = new Map<string, number>();
	const names = new Map<string, string>();
	const byAge = [...garments].sort((one, other) =>
		one.addedAt === other.addedAt ? (one.id < other.id ? -1 : 1) : one.addedAt < other.addedAt ? -1 : 1,
	);
	for (const garment of byAge) {
		if (garment.nameFrom === 'user') continue;
		const base = garmentName(garment);
		let place = (places.get(base) ?? 0) + 1;
		while (taken.has(nameAmongEqual(base, place))) place++;
		places.set(base, place);
		names.set(garment.id, nameAmongEqual(base, place));
	}
	return garments.map((garment) => {
		const name = names.get(garment.id);
		return name === undefined ? garment : { ...garment, name };
	});
}
