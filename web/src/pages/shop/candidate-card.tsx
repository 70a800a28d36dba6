import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { usePhotos } from '../../api/photos.ts';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { ReadingNote } from '../../photo/reading-note.tsx';
import { CandidateEnds } from './candidate-ends.tsx';
import { CandidateFields } from './candidate-fields.tsx';
import { CandidateWords } from './candidate-words.tsx';
import { useCheck } from './use-check.ts';

/** One candidate: its photo, what is said of it and why, what the person tells of it, and how it can end. */
export function CandidateCard({
	candidate,
	report,
	compared,
	onCompare,
}: {
	candidate: CandidateDetails;
	report: Report;
	compared: boolean;
	onCompare: (on: boolean) => void;
}) {
	const { id, name, photoId } = candidate;
	const { data: check, error } = useCheck(id);
	const photo = usePhotos([photoId]).get(photoId);
	const [photoOpen, setPhotoOpen] = useState(false);
	const change = useChange((changes: Partial<CandidateDetails>) =>
		changeThing('changeCandidate', id, candidate, changes),
	);
	const title = name || say('shopPage.candidate');
	return (
		<article className="candidate" aria-label={name}>
			<button type="button" className="tile-button" onClick={() => setPhotoOpen(true)}>
				<PhotoTile
					photoId={photo?.reading ? photoId : undefined}
					picture="display"
					alt=""
					shape="free"
					size={photo?.reading}
				/>
				<span className="small photo-tools">{say('garment.tools')}</span>
			</button>
			<div className="stack">
				<h2>{title}</h2>
				<ReadingNote photo={photo} />
				<Problem of={error} />
				{check && photo?.status === 'read' ? <CandidateWords check={check} name={name} /> : null}
			</div>
			<div className="stack">
				<CandidateFields candidate={candidate} onChange={change.run} />
				<CandidateEnds
					candidate={candidate}
					compared={compared}
					mayTake={check?.recommendation === 'take'}
					onCompare={onCompare}
				/>
				<Problem of={change.problem} />
			</div>
			{photoOpen ? (
				<PhotoDialog photoId={photoId} title={title} onClose={() => setPhotoOpen(false)} pickFor={report.season.id} />
			) : null}
		</article>
	);
}
