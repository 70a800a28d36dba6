import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { measuredErrors } from '../../../src/wardrobe/words/light-error.ts';
import type { PhotoKind } from '../../../src/wardrobe/words/reading.ts';
import { percentText, seenFrom } from '../parts/colour-text.ts';
import { Swatch } from '../parts/swatch.tsx';
import { ReadingNote } from './reading-note.tsx';

const SHOWS: Readonly<Record<PhotoKind, string>> = {
	worn: 'Clothes on a person.',
	single: 'One garment by itself.',
	scene: 'Neither a person nor a garment: the whole frame counts.',
};

/** What was read of a photo, in words and swatches, and how far it can be believed. */
export function ReadingWords({ photo }: { photo: PhotoRecord }) {
	const { reading } = photo;
	if (!reading) return <div />;
	return (
		<div className="stack">
			<ReadingNote photo={photo} />
			<p>
				{SHOWS[reading.photoKind]}{' '}
				{reading.kindGuesses.length > 0
					? `It looks like ${reading.kindGuesses
							.slice(0, 2)
							.map(({ kind, probability }) => `${say(`kinds.${kind}`)} (${percentText(probability)})`)
							.join(' or ')}.`
					: ''}{' '}
				{reading.photoKind === 'scene' ? '' : `${reading.pattern.type} (${percentText(reading.pattern.sure)} sure).`}
			</p>
			<ul className="stack">
				{reading.swatches.map(({ lab, share, slot }, index) => (
					// Swatches have no identity but their place.
					// biome-ignore lint/suspicious/noArrayIndexKey: see above
					<li key={index}>
						<Swatch lab={lab} note={`${percentText(share)}${slot ? `, ${say(`slots.${slot}`)}` : ''}`} />
					</li>
				))}
			</ul>
			<div>
				<h3>How far to believe it</h3>
				<p>
					Four times in five its colours are off by {reading.trust.error.toFixed(0)} or less. {seenFrom()}{' '}
					{reading.trust.reasons.join('; ')}
					{reading.trust.reasons.length > 0 ? '.' : ''}
				</p>
				{reading.trust.advice ? <p>{reading.trust.advice}</p> : null}
				<p className="small quiet">{reading.light.reason}</p>
				<details className="small">
					<summary>Where these figures come from</summary>
					<p>{measuredErrors()}</p>
				</details>
			</div>
		</div>
	);
}
