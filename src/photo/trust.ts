import type { Light, Trust } from '../wardrobe/reading.ts';

/** Mean CIEDE2000 of phone photos by what their light is known from; measured on chart photos, see the light tests. */
const ERROR_BY_LIGHT: Readonly<Record<Light['source'], number>> = {
	'by-hand': 6,
	'neutral-pointed': 5,
	'neutral-found': 6,
	group: 6.5,
	estimate: 8,
	none: 9,
};

const WORDS_BY_LIGHT: Readonly<Record<Light['source'], string>> = {
	'by-hand': 'its light was set by hand',
	'neutral-pointed': 'corrected by the neutral you pointed at',
	'neutral-found': 'corrected by a white found in the picture',
	group: 'corrected by another picture of the same light',
	estimate: 'its lamp is only estimated, no white in the picture',
	none: 'no white in the picture tells its lamp',
};

/** How far the reading can be believed, CIEDE2000, with reasons and what would help. */
export function trustOf(light: Light): Trust {
	const isMeasured = light.source !== 'none' && light.source !== 'estimate';
	return {
		error: ERROR_BY_LIGHT[light.source],
		reasons: [WORDS_BY_LIGHT[light.source]],
		advice: isMeasured ? null : 'Photograph it by a window, beside a sheet of white paper, and point at the paper.',
	};
}
