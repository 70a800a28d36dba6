import { useCallback, useState } from 'react';
import type { PhotoRecord } from '../../../../src/store/store.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import type { Inspiration, Season } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { usePhotos } from '../../api/photos.ts';
import { useInspirations } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { TextField } from '../../parts/field.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { ReadingNote } from '../../photo/reading-note.tsx';
import { DropZone } from '../../uploads/drop-zone.tsx';
import { addUploads } from '../../uploads/upload-queue.ts';

function BoardTile({
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
	return (
		<li className="tile">
			<button type="button" className="tile-button" onClick={onOpen}>
				<PhotoTile photoId={photo?.reading ? inspiration.photoId : undefined} alt="" shape="tall" />
				<span className="tile-name">{inspiration.title || 'without a title'}</span>
			</button>
			<ReadingNote photo={photo} />
			{photo?.reading ? (
				<SwatchStrip swatches={photo.reading.swatches} label={`Colours of ${inspiration.title}`} />
			) : null}
			<details>
				<summary className="small">Title, group, remove</summary>
				<div className="stack">
					<TextField label="Title" value={inspiration.title} onCommit={(title) => change.run({ title })} />
					<TextField label="Group" value={inspiration.group} onCommit={(group) => change.run({ group })} />
					<Button
						small
						onPress={() => remove.run(undefined)}
						aria-label={`Take ${inspiration.title || 'this picture'} off the board`}
					>
						Take it off the board
					</Button>
				</div>
			</details>
			<Problem of={change.problem ?? remove.problem} />
		</li>
	);
}

/** The board: pictures in their groups; each opens to its outline and colours. */
export function Board({ season }: { season: Season }) {
	const { data, error } = useInspirations(season.id);
	const inspirations = data ?? [];
	const photos = usePhotos(inspirations.map(({ photoId }) => photoId));
	const [openId, setOpenId] = useState<string | null>(null);
	const opened = inspirations.find(({ id }) => id === openId);
	const onPhotos = useCallback((files: readonly File[]) => addUploads(files, 'inspiration', season.id), [season.id]);
	const groups = [...new Set(inspirations.map(({ group }) => group))].sort();
	return (
		<section className="section" aria-labelledby="board">
			<h2 id="board">The board</h2>
			<DropZone label="pictures" onPhotos={onPhotos} />
			<Problem of={error} />
			{inspirations.length === 0 && data ? (
				<Empty title="No picture yet">
					<p>
						Ten to twenty pictures make a steady palette: people in clothes you like, a landscape, a fabric, a painting.
						A picture without people or garments counts as a whole.
					</p>
				</Empty>
			) : (
				groups.map((group) => (
					<div key={group} className="board-group">
						{groups.length > 1 ? <h3>{group || 'Not grouped'}</h3> : null}
						<ul className="tiles">
							{inspirations
								.filter((one) => one.group === group)
								.map((inspiration) => (
									<BoardTile
										key={inspiration.id}
										inspiration={inspiration}
										photo={photos.get(inspiration.photoId)}
										onOpen={() => setOpenId(inspiration.id)}
									/>
								))}
						</ul>
					</div>
				))
			)}
			{inspirations.length > 0 ? (
				<p className="quiet small">{counted(inspirations.length, 'picture')} on the board.</p>
			) : null}
			{opened ? (
				<PhotoDialog
					photoId={opened.photoId}
					title={opened.title || 'A picture'}
					onClose={() => setOpenId(null)}
					pickFor={season.id}
				/>
			) : null}
		</section>
	);
}
