import { SAME_SIDE_BY_SIDE } from '../../colour/same-colour.ts';
import { say } from '../../language/speak.ts';
import { reachOf } from '../palette/palette-reach.ts';
import { asSentence } from '../words/as-sentence.ts';
import { colourWord, type Palette, type PaletteColour } from '../words/palette-colour.ts';
import type { Trust } from '../words/reading.ts';
import { saidColour } from '../words/said-colour.ts';
import type { Fit, SwatchFit } from './fit-result.ts';
import { NOTHING_FROM } from './fit-score.ts';

const shareText = (share: number): string => say('fit.share', { percent: Math.round(share * 100) });

/** What counts as a palette colour is close to it at least: how far it reaches is the one rule. */
const closeness = (distance: number, colour: PaletteColour): string =>
	say(distance <= SAME_SIDE_BY_SIDE ? 'fit.matches' : distance <= reachOf(colour) ? 'fit.close' : 'fit.some');

/** One swatch in words, such as "62 % of it, sage, is close to oat". */
export function swatchFitSentence(fit: Omit<SwatchFit, 'sentence'>, colour: PaletteColour | null): string {
	const blanks = { share: shareText(fit.swatch.share), colour: saidColour(fit.swatch.lab) };
	if (!colour) return say('fit.partNoPalette', blanks);
	if (fit.distance >= NOTHING_FROM) return say('fit.partNothing', blanks);
	const asked = colourWord(colour);
	return fit.within
		? say('fit.partMatches', { ...blanks, closeness: closeness(fit.distance, colour), asked })
		: say('fit.partTooFar', { ...blanks, asked });
}

/** The likely verdict behind an `unsure`, in words. */
export const likelyWords = (likely: Fit['likely']): string =>
	say(({ fits: 'fit.likelyFits', near: 'fit.likelyNear', off: 'fit.likelyOff' } as const)[likely]);

/** The verdicts that the photo's error leaves room for: with all of the piece as far from the palette as it may be, and as near. */
export type VerdictRoom = { readonly worst: Fit['likely']; readonly best: Fit['likely'] };

function closing(fit: Omit<Fit, 'sentence'>, trust: Trust, { worst, best }: VerdictRoom): string {
	if (fit.verdict === 'fits') return say('fit.fits');
	if (fit.verdict === 'near') return say('fit.nearVerdict');
	if (fit.verdict === 'off') return say('fit.off');
	const range = say(best === 'near' ? 'fit.offOrNear' : worst === 'off' ? 'fit.anything' : 'fit.nearOrFits');
	const why = trust.reasons[0] ? say('fit.why', { reason: trust.reasons[0] }) : '';
	return say('fit.unsure', { likely: likelyWords(fit.likely), range, why });
}

/** What lies near one palette colour, taken together: share, and mean distance by area. */
type NearPart = { readonly colour: PaletteColour; readonly share: number; readonly distance: number };

function nearParts(fit: Omit<Fit, 'sentence'>, palette: Palette): NearPart[] {
	return palette.colours
		.map((colour) => {
			const own = fit.swatches.filter(
				({ paletteColourId, score }) => paletteColourId === colour.id && score >= ODD_UNDER,
			);
			const share = own.reduce((sum, { swatch }) => sum + swatch.share, 0);
			const distance = own.reduce((sum, one) => sum + one.distance * one.swatch.share, 0) / share;
			return { colour, share, distance };
		})
		.filter(({ share }) => share > 0)
		.sort((one, other) => other.share - one.share);
}

/** A swatch that counts less than half is odd, and told apart. */
const ODD_UNDER = 0.5;

/** A smaller part is a button or a seam: nobody asks about it where the rest is told. Our choice. */
const ODD_TOLD_FROM = 0.05;

/** The reasons of a fit: what of it lies near which colour, the heaviest part first, the heaviest odd part, and how sure it is. */
export function fitSentence(fit: Omit<Fit, 'sentence'>, trust: Trust, palette: Palette, room: VerdictRoom): string {
	const told = nearParts(fit, palette)
		.slice(0, 2)
		.map(({ colour, share, distance }) =>
			say('fit.near', { share: shareText(share), closeness: closeness(distance, colour), asked: colourWord(colour) }),
		);
	const odd = fit.swatches
		.filter(({ score, swatch }) => score < ODD_UNDER && (swatch.share >= ODD_TOLD_FROM || told.length === 0))
		.sort((one, other) => other.swatch.share - one.swatch.share)[0];
	if (odd) told.push(oddSentence(odd, palette));
	// Where nothing of it matches anything, the reason says the verdict already.
	const isSaid = fit.verdict === 'off' && told.length === 1 && odd !== undefined && odd.distance >= NOTHING_FROM;
	const reasons = `${asSentence(told.join('; '))}.`;
	return isSaid ? reasons : `${reasons} ${closing(fit, trust, room)}`;
}

/** From this share on a colour is all of a piece, as far as anybody would say. */
const ALL_FROM = 0.95;

function oddSentence({ swatch, distance, paletteColourId }: SwatchFit, palette: Palette): string {
	const blanks = { colour: saidColour(swatch.lab), share: shareText(swatch.share) };
	const isAll = swatch.share >= ALL_FROM;
	const colour = palette.colours.find(({ id }) => id === paletteColourId);
	return distance < NOTHING_FROM && colour
		? say(isAll ? 'fit.oddAllSome' : 'fit.oddSome', {
				...blanks,
				closeness: closeness(distance, colour),
				asked: colourWord(colour),
			})
		: say(isAll ? 'fit.oddAllNothing' : 'fit.oddNothing', blanks);
}
