import { useState } from 'react';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { GarmentJudgement } from '../../parts/garment-judgement.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { GarmentFields } from './garment-fields.tsx';
import type { GarmentRow } from './garment-filter.ts';
import { SplitPhoto } from './split-photo.tsx';

/** One garment whole: its photos, what the season says of it, and all that can be told about it. */
export function GarmentDialog({
	row: { garment, said },
	garments,
	seasonId,
	report,
	onClose,
	onOpen,
}: {
	row: GarmentRow;
	garments: readonly Garment[];
	seasonId: string;
	/** null while it is still on its way. */
	report: Report | null;
	onClose: () => void;
	onOpen: (id: string) => void;
}) {
	const [photoId, setPhotoId] = useState<string | null>(null);
	const [splitting, setSplitting] = useState<string | null>(null);
	const remove = useChange(() => removeThing('removeGarment', garment.id, garment), onClose);
	const part = useChange((id: string) => call('partGarment', { params: { id: garment.id }, body: { photoId: id } }));
	const first = useChange((id: string) =>
		changeThing('changeGarment', garment.id, garment, {
			photoIds: [id, ...garment.photoIds.filter((one) => one !== id)],
		}),
	);
	return (
		<Dialog title={garment.name || 'A garment'} onClose={onClose}>
			<div className="garment-columns">
				<div className="stack">
					{garment.photoIds.map((id, index) => (
						<div key={id} className="stack">
							<button type="button" className="tile-button" onClick={() => setPhotoId(id)}>
								<PhotoTile
									photoId={garment.swatches.length > 0 ? id : undefined}
									picture="display"
									alt={`Photo ${index + 1} of ${garment.name}`}
									shape="free"
								/>
								<span className="small">Outline, light, eyedropper</span>
							</button>
							<span className="row">
								<Button small onPress={() => setSplitting(id)}>
									It shows two garments
								</Button>
								{garment.photoIds.length > 1 ? (
									<>
										<Button small onPress={() => part.run(id)} isPending={part.busy}>
											It is another garment
										</Button>
										{index > 0 ? (
											<Button small onPress={() => first.run(id)} isPending={first.busy}>
												Show it first
											</Button>
										) : null}
									</>
								) : null}
							</span>
						</div>
					))}
					{garment.photoIds.length === 0 ? <p className="quiet">No photo yet, so no colours.</p> : null}
				</div>
				<div className="stack">
					{said && report ? <GarmentJudgement said={said} garment={garment} report={report} onOpen={onOpen} /> : null}
					<GarmentFields garment={garment} />
					<Button look="bare" onPress={() => remove.run(undefined)}>
						Put it in the bin
					</Button>
					<Problem of={remove.problem ?? part.problem ?? first.problem} />
				</div>
			</div>
			{photoId ? (
				<PhotoDialog photoId={photoId} title={garment.name} onClose={() => setPhotoId(null)} pickFor={seasonId} />
			) : null}
			{splitting ? (
				<SplitPhoto
					garment={garments.find(({ id }) => id === garment.id) ?? garment}
					photoId={splitting}
					onClose={() => setSplitting(null)}
					onDone={onClose}
				/>
			) : null}
		</Dialog>
	);
}
