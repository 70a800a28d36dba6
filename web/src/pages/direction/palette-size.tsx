import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { request } from '../../api/request.ts';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

const within = (text: string, most: number) => Math.min(most, Math.max(0, Math.round(Number(text) || 0)));

/** How many neutrals and colours to derive the next time. */
export function PaletteSize({ season }: { season: Season }) {
	const change = useChange((changes: Partial<Season>) => request('PUT', `/api/seasons/${season.id}`, changes));
	return (
		<details>
			<summary>
				Size: {season.baseCount} base and {season.colourCount} coloured
			</summary>
			<div className="fields">
				<TextField
					label="Base neutrals"
					type="number"
					min={0}
					max={12}
					value={String(season.baseCount)}
					onCommit={(text) => change.run({ baseCount: within(text, 12) })}
				/>
				<TextField
					label="Coloured"
					type="number"
					min={0}
					max={16}
					value={String(season.colourCount)}
					hint="Counts when the palette is derived again."
					onCommit={(text) => change.run({ colourCount: within(text, 16) })}
				/>
			</div>
			<Problem of={change.problem} />
		</details>
	);
}
