import { factsOfKind, KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import type { SeasonDays } from '../../../../src/wardrobe/words/season.ts';
import { TextField } from '../../parts/field.tsx';

/** Wears before a wash, kind by kind: as usual, or as the user wants. */
export function WearsFields({
	days,
	onChange,
}: {
	days: SeasonDays;
	onChange: (wears: SeasonDays['wearsPerWash']) => void;
}) {
	const washed = KIND_NAMES.filter((kind) => factsOfKind(kind).wears > 0);
	return (
		<details>
			<summary>Wears before a wash</summary>
			<p className="small quiet">Common practice, no source: change what is otherwise with you.</p>
			<div className="fields">
				{washed.map((kind) => (
					<TextField
						key={kind}
						label={factsOfKind(kind).label}
						type="number"
						min={1}
						max={365}
						value={String(days.wearsPerWash[kind] ?? factsOfKind(kind).wears)}
						onCommit={(text) =>
							onChange({ ...days.wearsPerWash, [kind]: Math.min(365, Math.max(1, Math.round(Number(text) || 1))) })
						}
					/>
				))}
			</div>
		</details>
	);
}
