import { chroma, hueDegrees, type Lab65 } from '../../src/colour/lab65.ts';
import { say } from '../../src/language/speak.ts';
import type { CandidateCheck } from '../../src/wardrobe/wishes/candidate.ts';
import type { Appearance } from '../../src/wardrobe/words/reading.ts';
import { saidColour } from '../../src/wardrobe/words/said-colour.ts';
import { element } from './element.ts';
import { pictureView } from './season-view.ts';
import { swatchView } from './swatch-view.ts';

/** The word of a verdict with a mark of its own, so that nothing is told by colour alone. */
const MARKS = { fits: '●', near: '◐', off: '○', unsure: '?' } as const;
const LIKELY = { fits: 'verdicts.likelyFits', near: 'verdicts.likelyNear', off: 'verdicts.likelyOff' } as const;

const numbersOf = (lab: Lab65): string =>
	`L* ${lab[0].toFixed(0)}  C* ${chroma(lab).toFixed(0)}  h ${hueDegrees(lab).toFixed(0)}°`;

/** The colours read, in words; their numbers on demand. */
function coloursView({ swatches, trust }: Appearance): HTMLElement[] {
	const percent = (share: number) => say('pocket.part', { percent: Math.round(share * 100) });
	return [
		element(
			'ul',
			{ class: 'swatches' },
			...swatches.map(({ lab, share }) => swatchView(lab, saidColour(lab, trust.error), percent(share))),
		),
		element(
			'details',
			{},
			element('summary', {}, say('colours.details')),
			...swatches.map(({ lab, name }) => element('p', {}, element('small', {}, `${name}: ${numbersOf(lab)}`))),
		),
	];
}

/** What to do about the piece, whether it fits, its colours, each reason, and what it goes with. */
export function verdictView(
	check: CandidateCheck,
	appearance: Appearance,
	pictures: Readonly<Record<string, string>>,
): (Node | string)[] {
	const { fit, sentence, reasons, partners, partnerCount } = check;
	const word = say(fit.verdict === 'unsure' ? LIKELY[fit.likely] : `verdicts.${fit.verdict}`);
	return [
		element('h2', {}, sentence),
		element('p', { class: 'verdict' }, `${MARKS[fit.verdict]} ${word}`),
		...coloursView(appearance),
		element('ul', { class: 'reasons' }, ...reasons.map((reason) => element('li', {}, reason))),
		...(partnerCount > 0 ? [element('p', {}, say('pocket.goesWith', { count: partnerCount }))] : []),
		element(
			'ul',
			{ class: 'pictures' },
			...partners.map(({ garmentId, name }) => pictureView(pictures[garmentId], name)),
		),
	];
}
