import { hexFromLab, type Lab65 } from '../../../src/colour/lab65.ts';
import { colourName } from '../../../src/colour/name.ts';
import { colourNumbers, percentText } from './colour-text.ts';

/** A colour on its plate of mid-grey, without words: only where the words stand beside it. */
export function Chip({ lab, size = 'medium' }: { lab: Lab65; size?: 'small' | 'medium' | 'large' }) {
	return (
		<span className={`plate plate-${size}`} aria-hidden="true">
			<span className="chip" style={{ backgroundColor: hexFromLab(lab) }} />
		</span>
	);
}

/** A colour on mid-grey with its systematic name and L*, C*, h, so that nobody has to rely on seeing the hue. */
export function Swatch({
	lab,
	label = '',
	note,
	size = 'medium',
}: {
	lab: Lab65;
	/** The user's own word for it, or ''. */
	label?: string;
	note?: string;
	size?: 'small' | 'medium' | 'large';
}) {
	const name = colourName(lab);
	return (
		<span className="swatch">
			<Chip lab={lab} size={size} />
			<span className="swatch-words">
				<span className="swatch-name">{label || name}</span>
				{label ? <span className="small quiet">{name}</span> : null}
				<span className="small quiet number">{colourNumbers(lab)}</span>
				{note ? <span className="small quiet">{note}</span> : null}
			</span>
		</span>
	);
}

type Shared = { readonly lab: Lab65; readonly share: number };

/** Several colours by their share, on mid-grey; the words are there for whoever does not see them. */
export function SwatchStrip({ swatches, label }: { swatches: readonly Shared[]; label: string }) {
	if (swatches.length === 0) return null;
	const words = swatches.map(({ lab, share }) => `${percentText(share)} ${colourName(lab)}`).join(', ');
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
