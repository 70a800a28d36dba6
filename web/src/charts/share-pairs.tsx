import { scaleLinear } from 'd3-scale';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { say } from '../../../src/language/speak.ts';
import { percentText } from '../parts/colour-text.ts';
import { Chip } from '../parts/swatch.tsx';
import './share-pairs.css';

export type SharePair = {
	readonly key: string;
	readonly label: string;
	readonly lab?: Lab65;
	readonly owned: number;
	readonly worn: number;
};

/** Owned against worn, two bars a row on one scale; the figures stand beside them, so that it reads as a table too. */
export function SharePairs({ rows }: { rows: readonly SharePair[] }) {
	if (rows.length === 0) return <p className="quiet">{say('sharePairs.none')}</p>;
	const x = scaleLinear([0, Math.max(...rows.flatMap(({ owned, worn }) => [owned, worn]), 0.01)], [0, 100]);
	return (
		<table className="share-pairs">
			<thead>
				<tr>
					<th scope="col">
						<span className="hidden-visually">{say('sharePairs.what')}</span>
					</th>
					<th scope="col">
						<span className="key-owned">{say('sharePairs.owned')}</span>{' '}
						<span className="key-worn">{say('sharePairs.worn')}</span>
					</th>
					<th scope="col" className="figure">
						{say('sharePairs.owned')}
					</th>
					<th scope="col" className="figure">
						{say('sharePairs.worn')}
					</th>
				</tr>
			</thead>
			<tbody>
				{rows.map(({ key, label, lab, owned, worn }) => (
					<tr key={key}>
						<th scope="row">
							<span className="swatch">
								{lab ? <Chip lab={lab} size="small" /> : null}
								{label}
							</span>
						</th>
						<td className="share-bars" aria-hidden="true">
							<span className="bar-owned" style={{ width: `${x(owned)}%` }} />
							<span className="bar-worn" style={{ width: `${x(worn)}%` }} />
						</td>
						<td className="figure">{percentText(owned)}</td>
						<td className="figure">{percentText(worn)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}
