import type { WornOutfits } from '../../../../src/wardrobe/season/worn-outfits.ts';

/** What the wears say of outfits: worn again and again, favourites never combined, and what was never worn and why. */
export function WornOutfitWords({ outfits }: { outfits: WornOutfits }) {
	const sentences = [...outfits.wornAgain, ...outfits.neverCombined, ...outfits.neverWorn].map(
		({ sentence }) => sentence,
	);
	if (sentences.length === 0) return null;
	return (
		<ul className="reasons">
			{sentences.map((sentence) => (
				<li key={sentence}>{sentence}</li>
			))}
		</ul>
	);
}
