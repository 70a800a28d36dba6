import { useCallback, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Inspiration, Season } from '../../../../src/wardrobe/words/season.ts';
import { usePhotos } from '../../api/photos.ts';
import { useInspirations } from '../../api/wardrobe.ts';
import { Empty } from '../../parts/empty.tsx';
import { Problem } from '../../parts/problem.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { DropZone } from '../../uploads/drop-zone.tsx';
import { addUploads } from '../../uploads/upload-queue.ts';
import { BoardTile } from './board-tile.tsx';

function Groups({ inspirations, onOpen }: { inspirations: readonly Inspiration[]; onOpen: (id: string) => void }) {
	const photos = usePhotos(inspirations.map(({ photoId }) => photoId));
	const groups = [...new Set(inspirations.map(({ group }) => group))].sort();
	return groups.map((group) => (
		<div key={group} className="board-group">
			{groups.length > 1 ? <h3>{group || say('board.notGrouped')}</h3> : null}
			<ul className="tiles">
				{inspirations
					.filter((one) => one.group === group)
					.map((inspiration) => (
						<BoardTile
							key={inspiration.id}
							inspiration={inspiration}
							photo={photos.get(inspiration.photoId)}
							onOpen={() => onOpen(inspiration.id)}
						/>
					))}
			</ul>
		</div>
	));
}

/** The board: pictures in their groups; each opens to its outline and colours. */
export function Board({ season }: { season: Season }) {
	const { data, error } = useInspirations(season.id);
	const inspirations = data ?? [];
	const [openId, setOpenId] = useState<string | null>(null);
	const opened = inspirations.find(({ id }) => id === openId);
	const onPhotos = useCallback((files: readonly File[]) => addUploads(files, 'inspiration', season.id), [season.id]);
	return (
		<section className="section" aria-labelledby="board">
			<h2 id="board">{say('board.title')}</h2>
			<DropZone label={say('board.pictures')} onPhotos={onPhotos} />
			<Problem of={error} />
			{inspirations.length === 0 && data ? (
				<Empty title={say('board.none')}>
					<p>{say('board.noneHow')}</p>
				</Empty>
			) : (
				<Groups inspirations={inspirations} onOpen={setOpenId} />
			)}
			{inspirations.length > 0 ? (
				<p className="quiet small">
					{say('board.count', { pictures: say('counts.pictures', { count: inspirations.length }) })}
				</p>
			) : null}
			{opened ? (
				<PhotoDialog
					photoId={opened.photoId}
					title={opened.title || say('board.aPicture')}
					onClose={() => setOpenId(null)}
					pickFor={season.id}
				/>
			) : null}
		</section>
	);
}
