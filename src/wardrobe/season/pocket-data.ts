import type { Language } from '../../colour/words/language.ts';
import type { Garment } from '../words/garment.ts';
import type { Reading } from '../words/reading.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** Everything in the pocket page's file besides code. */
export type PocketData = {
	/** The language that the file was made in; the page speaks no other. */
	readonly language: Language;
	/** All that a judgement takes, as at home, without what no judgement of a find reads. */
	readonly input: SeasonInput;
	/** A small picture of each garment, WebP as a data address; none where the file would have grown too large. */
	readonly pictures: Readonly<Record<string, string>>;
};

/** A garment without its notes and the like. Where its photo cannot be believed is told of the find alone. */
const leanGarment = (garment: Garment): Garment => ({
	...garment,
	photoIds: [],
	notes: '',
	care: '',
	changedAt: '',
	trust: { ...garment.trust, reasons: [], advice: null },
});

/** A reading without what only the palette and the photo's own page take. */
function leanReading({
	ownLight: _own,
	quality: _quality,
	ground: _ground,
	neutrals: _neutrals,
	...reading
}: Reading): Reading {
	return { ...reading, kindGuesses: [], uncorrected: [] };
}

/** The input of a season as the pocket page carries it: a find is judged by it as by the whole. */
export const leanInput = (input: SeasonInput): SeasonInput => ({
	...input,
	garments: input.garments.map(leanGarment),
	inspirations: input.inspirations.map(({ inspiration, reading }) => ({ inspiration, reading: leanReading(reading) })),
	candidates: [],
	makers: [],
	lastYear: null,
});
