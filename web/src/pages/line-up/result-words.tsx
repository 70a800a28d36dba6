import type { LineUpProof, LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpWeights } from '../../../../src/wardrobe/words/season.ts';
import { percentText } from '../../parts/colour-text.ts';

function proofText(proof: LineUpProof): string {
	if (proof.kind === 'best-possible') return 'Best possible: no other set under these numbers does better.';
	if (proof.kind === 'within')
		return `Within ${proof.percent < 1 ? proof.percent.toFixed(1) : Math.ceil(proof.percent)} % of the best possible.`;
	return 'Best found: how far the best possible lies above it could not be said.';
}

const PARTS = [
	['outfits', 'outfits, of all that would be if everything went with everything'],
	['fit', 'mean fit to the palette'],
	['loved', 'loved and worn'],
] as const;

/** How good the set just built is known to be, and what could not be met. */
export function ResultWords({ result, weights }: { result: LineUpResult; weights: LineUpWeights }) {
	return (
		<section className="sheet stack" aria-label="The line-up just built">
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
