import { say } from '../../../../src/language/speak.ts';
import type { WornOutfits } from '../../../../src/wardrobe/season/worn-outfits.ts';

/** Sentences shown before the rest is asked for. */
const SHOWN = 5;

function Sentences({ all }: { all: readonly string[] }) {
	return (
		<ul className="reasons">
			{all.map((sentence) => (
				<li key={sentence}>{sentence}</li>
			))}
		</ul>
	);
}

/** What the wears say of outfits: worn again and again, favourites never combined, and what was never worn and why. */
export function WornOutfitWords({ outfits }: { outfits: WornOutfits }) {
	const sentences = [...outfits.wornAgain, ...outfits.neverCombined, ...outfits.neverWorn].map(
		({ sentence }) => sentence,
	);
	if (sentences.length === 0) return null;
	const [first, rest] = [sentences.slice(0, SHOWN), sentences.slice(SHOWN)];
	return (
		<div>
			<Sentences all={first} />
			{rest.length > 0 ? (
				<details>
					<summary>{say('wornTogether.more', { count: rest.length })}</summary>
					<Sentences all={rest} />
				</details>
			) : null}
		</div>
	);
}
