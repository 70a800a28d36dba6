import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { usePhotos } from '../../api/photos.ts';
import { Button } from '../../parts/button.tsx';
import { Check, SelectField, TextField } from '../../parts/field.tsx';
import { numberOrNull } from '../../parts/number-text.ts';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { ReadingNote } from '../../photo/reading-note.tsx';
import { useCheck } from './use-check.ts';

/** One candidate with its recommendation and the reasons, its details, and the two ways it can end. */
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
	const { id, name } = candidate;
	const { data: check, error } = useCheck(id);
	const photo = usePhotos([candidate.photoId]).get(candidate.photoId);
	const [photoOpen, setPhotoOpen] = useState(false);
	const change = useChange((changes: Partial<CandidateDetails>) =>
		changeThing('changeCandidate', id, candidate, changes),
	);
	const end = useChange((word: 'bought' | 'passed') =>
		call(word === 'bought' ? 'buyCandidate' : 'passCandidate', { params: { id: id } }),
	);
	const remove = useChange(() => removeThing('removeCandidate', id, candidate));
	const read = photo?.status === 'read';
	return (
		<article className="candidate" aria-label={name}>
			<button type="button" className="tile-button" onClick={() => setPhotoOpen(true)}>
				<PhotoTile
					photoId={photo?.reading ? candidate.photoId : undefined}
					picture="display"
					alt=""
					shape="free"
					size={photo?.reading}
				/>
				<span className="small">Outline, light, eyedropper</span>
			</button>
			<div className="stack">
				<h2>{name || 'A candidate'}</h2>
				<ReadingNote photo={photo} />
				<Problem of={error} />
				{check && read ? (
					<>
						<p className="recommendation">{check.sentence}</p>
						<p>
							<VerdictMark {...check.fit} />
						</p>
						<SwatchStrip swatches={check.fit.swatches.map(({ swatch }) => swatch)} label={`Colours of ${name}`} />
						<ul className="reasons">
							{check.reasons.map((reason) => (
								<li key={reason}>{reason}</li>
							))}
						</ul>
						{check.partners.length > 0 ? (
							<details>
								<summary>Goes with {counted(check.partnerCount, 'garment')}</summary>
								<ul className="reasons">
									{check.partners.map((partner) => (
										<li key={partner.garmentId}>
											{partner.name}: {partner.support.sentence}
										</li>
									))}
								</ul>
							</details>
						) : null}
					</>
				) : null}
			</div>
			<div className="stack">
				<TextField label="Name" value={name} onCommit={(text) => change.run({ name: text })} />
				<SelectField
					label={candidate.kindFrom === 'user' ? 'Kind' : 'Kind (suggested)'}
					value={candidate.kind}
					options={KIND_NAMES.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) }))}
					onChange={(kind) => change.run({ kind })}
				/>
				<TextField
					label="Price"
					type="number"
					min={0}
					step="any"
					value={candidate.price?.toString() ?? ''}
					onCommit={(text) => change.run({ price: numberOrNull(text) })}
				/>
				<TextField
					label="Where"
					value={candidate.source}
					maxLength={2000}
					onCommit={(source) => change.run({ source })}
				/>
				<Check label="used" checked={candidate.used} onChange={(used) => change.run({ used })} />
				<div className="row">
					<Button look="main" onPress={() => end.run('bought')} isPending={end.busy} aria-label={`Bought ${name}`}>
						Bought
					</Button>
					<Button onPress={() => end.run('passed')} isPending={end.busy} aria-label={`Passed on ${name}`}>
						Passed
					</Button>
					<Check label="compare" checked={compared} onChange={onCompare} />
					<Button small look="bare" onPress={() => remove.run(undefined)} aria-label={`Put ${name} in the bin`}>
						To the bin
					</Button>
				</div>
				<Problem of={change.problem ?? end.problem ?? remove.problem} />
			</div>
			{photoOpen ? (
				<PhotoDialog
					photoId={candidate.photoId}
					title={name || 'A candidate'}
					onClose={() => setPhotoOpen(false)}
					pickFor={report.season.id}
				/>
			) : null}
		</article>
	);
}
