import { hexFromLab, type Lab65 } from '../../../src/colour/lab65.ts';
import { colourName } from '../../../src/colour/name.ts';
import { say } from '../../../src/language/speak.ts';
import { saidColour } from '../../../src/wardrobe/words/said-colour.ts';
import { colourNumbers, percentText } from './colour-text.ts';

/** A colour on its plate of mid-grey, without words: only where the words stand beside it. */
export function Chip({ lab, size = 'medium' }: { lab: Lab65; size?: 'small' | 'medium' | 'large' }) {
	return (
		<span className={`plate plate-${size}`} aria-hidden="true">
			<span className="chip" style={{ backgroundColor: hexFromLab(lab) }} />
		</span>
	);
}

/** A colour on mid-grey with the word people use for it, so that nobody has to rely on seeing the hue; its systematic name and numbers on demand. */
export function Swatch({
	lab,
	label = '',
	note,
	error = 0,
	size = 'medium',
}: {
	lab: Lab65;
	/** The user's own word for it, or ''; the word people use stands below where the label lacks it. */
	label?: string;
	note?: string;
	/** Expected error of its photo in CIEDE2000 units; 0 for a colour that nobody photographed. */
	error?: number;
	size?: 'small' | 'medium' | 'large';
}) {
	const word = saidColour(lab, error);
	return (
		<div className="swatch">
			<Chip lab={lab} size={size} />
			<div className="swatch-words">
				<span className="swatch-name">{label || word}</span>
				{label && !label.includes(word) ? <span className="small quiet">{word}</span> : null}
				{note ? <span className="small quiet">{note}</span> : null}
				<ColourDetails lab={lab} />
			</div>
		</div>
	);
}

/** The systematic ISCC-NBS name, L*, C*, h and the CSS colour: for whoever needs them. */
export function ColourDetails({ lab }: { lab: Lab65 }) {
	return (
		<details className="small quiet colour-details">
			<summary>{say('colours.details')}</summary>
			<span>{colourName(lab)}</span>
			<span className="number">{colourNumbers(lab)}</span>
			<code>{hexFromLab(lab)}</code>
		</details>
	);
}

type Shared = { readonly lab: Lab65; readonly share: number };

/** Several colours by their share, on mid-grey; the words are there for whoever does not see them. */
export function SwatchStrip({ swatches, label }: { swatches: readonly Shared[]; label: string }) {
	if (swatches.length === 0) return null;
	const words = swatches.map(({ lab, share }) => `${percentText(share)} ${saidColour(lab)}`).join(', ');
	return (
		<span className="plate strip" role="img" aria-label={`${label}: ${words}`} title={words}>
			{swatches.map(({ lab, share }, index) => (
				// The order is the reading's own and does not change while shown.
				// biome-ignore lint/suspicious/noArrayIndexKey: swatches have no other identity
				<span key={index} className="chip" style={{ backgroundColor: hexFromLab(lab), flexGrow: share }} />
			))}
		</span>
	);
}
