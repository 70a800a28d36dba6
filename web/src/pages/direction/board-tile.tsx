import { say } from '../../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../../src/store/store.ts';
import type { Inspiration } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { ReadingNote } from '../../photo/reading-note.tsx';

/** One picture of the board: it opens to its outline and colours; its title and group are changed here. */
export function BoardTile({
	inspiration,
	photo,
	onOpen,
}: {
	inspiration: Inspiration;
	photo: PhotoRecord | undefined;
	onOpen: () => void;
}) {
	const change = useChange((changes: { title?: string; group?: string }) =>
		changeThing('changeInspiration', inspiration.id, inspiration, changes),
	);
	const remove = useChange(() => removeThing('removeInspiration', inspiration.id, inspiration));
	const title = inspiration.title || say('board.aPicture');
	return (
		<li className="tile">
			<button type="button" className="tile-button" onClick={onOpen}>
				<PhotoTile photoId={photo?.reading ? inspiration.photoId : undefined} alt="" shape="tall" />
				<span className="tile-name">{title}</span>
			</button>
			<ReadingNote photo={photo} />
			{photo?.reading ? (
				<SwatchStrip swatches={photo.reading.swatches} label={say('board.colours', { title })} />
			) : null}
			<details>
				<summary className="small">{say('board.more')}</summary>
				<div className="stack">
					<TextField
						label={say('board.titleField')}
						value={inspiration.title}
						onCommit={(next) => change.run({ title: next })}
					/>
					<TextField
						label={say('board.groupField')}
						value={inspiration.group}
						onCommit={(group) => change.run({ group })}
					/>
					<Button small onPress={() => remove.run(undefined)} aria-label={say('board.takeOffNamed', { title })}>
						{say('board.takeOff')}
					</Button>
				</div>
			</details>
			<Problem of={change.problem ?? remove.problem} />
		</li>
	);
}
