import { say } from '../../../../src/language/speak.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** A whole number up to `most`, or null for an empty field: as many as the board holds. */
const within = (text: string, most: number) =>
	text.trim() === '' ? null : Math.min(most, Math.max(0, Math.round(Number(text) || 0)));

const baseWords = (count: number | null): string =>
	count === null ? say('palette.asManyBase') : say('palette.countBase', { count });
const otherWords = (count: number | null): string =>
	count === null ? say('palette.asManyOther') : say('palette.countOther', { count });

/** How many neutrals and colours to derive the next time. */
export function PaletteSize({ season }: { season: Season }) {
	const change = useChange((changes: Partial<Season>) => changeThing('changeSeason', season.id, season, changes));
	return (
		<details>
			<summary>
				{season.baseCount === null && season.colourCount === null
					? say('palette.sizeAll')
					: say('palette.size', { base: baseWords(season.baseCount), other: otherWords(season.colourCount) })}
			</summary>
			<div className="fields">
				<TextField
					label={say('palette.neutrals')}
					type="number"
					min={0}
					max={12}
					value={String(season.baseCount ?? '')}
					onCommit={(text) => change.run({ baseCount: within(text, 12) })}
				/>
				<TextField
					label={say('palette.coloured')}
					type="number"
					min={0}
					max={24}
					value={String(season.colourCount ?? '')}
					hint={say('palette.sizeHint')}
					onCommit={(text) => change.run({ colourCount: within(text, 24) })}
				/>
			</div>
			<Problem of={change.problem} />
		</details>
	);
}
