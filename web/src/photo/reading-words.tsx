import { say } from '../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { measuredErrors } from '../../../src/wardrobe/words/light-error.ts';
import type { Reading } from '../../../src/wardrobe/words/reading.ts';
import { percentText, seenFrom, sureText } from '../parts/colour-text.ts';
import { Swatch } from '../parts/swatch.tsx';
import { trueWords } from '../parts/true-words.ts';
import { ReadingNote } from './reading-note.tsx';

/** The kinds it may be, the two likeliest, each with how likely. */
const kindWords = ({ kindGuesses }: Reading): string =>
	kindGuesses.length === 0
		? ''
		: say('photo.looksLike', {
				kinds: kindGuesses
					.slice(0, 2)
					.map(({ kind, probability }) =>
						say('photo.kindSure', { kind: say(`kinds.${kind}`), percent: sureText(probability) }),
					)
					.join(say('photo.or')),
			});

/** What was read of a photo, in words and swatches, and how far it can be believed. */
export function ReadingWords({ photo }: { photo: PhotoRecord }) {
	const { reading } = photo;
	if (!reading) return <div />;
	return (
		<div className="stack">
			<ReadingNote photo={photo} />
			<p>
				{say(`photo.${reading.photoKind}`)} {kindWords(reading)}{' '}
				{reading.photoKind === 'scene'
					? ''
					: say('photo.patternSure', {
							pattern: say(`patterns.${reading.pattern.type}`),
							percent: sureText(reading.pattern.sure),
						})}
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
				<h3>{say('photo.howFar')}</h3>
				<p>
					{trueWords(reading.trust.error)}{' '}
					{reading.trust.reasons.length > 0 ? say('photo.because', { reasons: reading.trust.reasons.join('; ') }) : ''}
				</p>
				{reading.trust.advice ? <p>{reading.trust.advice}</p> : null}
				<p className="small quiet">{reading.light.reason}</p>
				<details className="small">
					<summary>{say('photo.sources')}</summary>
					<p>
						{say('photo.errorWords', { error: reading.trust.error.toFixed(0) })} {seenFrom()}
					</p>
					<p>{measuredErrors()}</p>
				</details>
			</div>
		</div>
	);
}
