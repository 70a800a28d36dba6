import { say } from '../../../../src/language/speak.ts';
import type { LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpWeights } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { percentText } from '../../parts/colour-text.ts';
import { weightWord } from '../../parts/weight-word.ts';

const PARTS = ['pictures', 'enough', 'palette', 'fit', 'loved', 'outfits'] as const;

function Parts({ result, weights }: { result: LineUpResult; weights: LineUpWeights }) {
	return (
		<details>
			<summary>{say('worth.details')}</summary>
			<table>
				<caption>{say('worth.chosenBy')}</caption>
				<tbody>
					{PARTS.map((part) => (
						<tr key={part}>
							<th scope="row">{say(`worth.${part}`)}</th>
							<td className="figure">{percentText(result.parts[part])}</td>
							<td className="figure quiet">{say('worth.weight', { weight: weightWord(weights[part]) })}</td>
						</tr>
					))}
				</tbody>
			</table>
		</details>
	);
}

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
		<section className="sheet stack" aria-label={say('worth.label')}>
			<p>{result.sentence}</p>
			<Parts result={result} weights={weights} />
			{better ? (
				<p className="row">
					<span>
						{say('worth.better', {
							count: better.garmentIds.filter((id) => !result.garmentIds.includes(id)).length,
							sentence: better.sentence,
						})}
					</span>
					<Button onPress={() => onTake(better)}>{say('worth.takeBetter')}</Button>
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
