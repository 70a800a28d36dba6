import type { LineUpProof, LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpWeights } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { percentText } from '../../parts/colour-text.ts';

function proofText(proof: LineUpProof): string {
	if (proof.kind === 'best-possible') return 'Best possible: no other set under these numbers does better.';
	if (proof.kind === 'within')
		return `Within ${proof.percent < 1 ? proof.percent.toFixed(1) : Math.ceil(proof.percent)} % of the best possible.`;
	return 'Best found: how far the best possible lies above it could not be said.';
}

const PARTS = [
	['pictures', 'of the pictures that your garments can wear, worn by this set'],
	['enough', 'of the days between two washes, dressed'],
	['palette', 'of the palette, covered'],
	['fit', 'fit of its pieces, look-alikes counting less and less'],
	['loved', 'loved and worn'],
	['outfits', 'pairs that go together, of all that could be'],
] as const;

/** How good the set just built is known to be, and what could not be met. */
export function ResultWords({
	result,
	weights,
	onTake,
}: {
	result: LineUpResult;
	weights: LineUpWeights;
	/** Takes the better set that was found instead. */
	onTake: (better: LineUpResult) => void;
}) {
	const { better } = result;
	return (
		<section className="sheet stack" aria-label="What the set is worth">
			<p>
				<strong className="italic">{proofText(result.proof)}</strong> {result.sentence}
			</p>
			<table>
				<caption>What it was chosen by (the weights are set under Season)</caption>
				<tbody>
					{PARTS.map(([key, label]) => (
						<tr key={key}>
							<th scope="row">{label}</th>
							<td className="figure">{percentText(result.parts[key])}</td>
							<td className="figure quiet">weight {weights[key].toFixed(2)}</td>
						</tr>
					))}
				</tbody>
			</table>
			{better ? (
				<p className="row">
					<span>
						A better set was found: {better.garmentIds.filter((id) => !result.garmentIds.includes(id)).length} pieces of
						it are others. {better.sentence}
					</span>
					<Button onPress={() => onTake(better)}>Take the better set</Button>
				</p>
			) : null}
			{result.problems.length > 0 ? (
				<ul className="reasons warn">
					{result.problems.map((problem) => (
						<li key={problem}>{problem}</li>
					))}
				</ul>
			) : null}
		</section>
	);
}
