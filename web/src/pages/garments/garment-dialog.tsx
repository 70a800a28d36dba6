import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { useChange } from '../../api/change.ts';
import { removeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { GarmentJudgement } from '../../parts/garment-judgement.tsx';
import { Problem } from '../../parts/problem.tsx';
import { PhotoDialog } from '../../photo/photo-dialog.tsx';
import { GarmentFields } from './garment-fields.tsx';
import type { GarmentRow } from './garment-filter.ts';
import { GarmentPhotos } from './garment-photos.tsx';
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
	return (
		<Dialog title={garment.name || say('garment.unnamed')} onClose={onClose}>
			<div className="garment-columns">
				<GarmentPhotos garment={garment} onOpen={setPhotoId} onSplit={setSplitting} />
				<div className="stack">
					{said && report ? <GarmentJudgement said={said} garment={garment} report={report} onOpen={onOpen} /> : null}
					<GarmentFields garment={garment} />
					<Button look="bare" onPress={() => remove.run(undefined)}>
						{say('garment.bin')}
					</Button>
					<Problem of={remove.problem} />
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
