import { say } from '../../../../src/language/speak.ts';
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
			<summary>{say('seasonDays.wears')}</summary>
			<p className="small quiet">{say('seasonDays.practice')}</p>
			<div className="fields">
				{washed.map((kind) => (
					<TextField
						key={kind}
						label={say(`kinds.${kind}`)}
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
