import { say } from '../../../../src/language/speak.ts';
import { factsOfKind, KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import type { SeasonDays } from '../../../../src/wardrobe/words/season.ts';
import { NumberField } from '../../parts/number-field.tsx';

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
			<div className="fields fields-short">
				{washed.map((kind) => (
					<NumberField
						key={kind}
						label={say(`kinds.${kind}`)}
						value={days.wearsPerWash[kind] ?? factsOfKind(kind).wears}
						least={1}
						most={365}
						onCommit={(wears) => onChange({ ...days.wearsPerWash, [kind]: wears })}
					/>
				))}
			</div>
		</details>
	);
}
