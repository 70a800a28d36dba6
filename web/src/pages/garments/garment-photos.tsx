import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { usePhotos } from '../../api/photos.ts';
import { Button } from '../../parts/button.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { Problem } from '../../parts/problem.tsx';

/** A garment's photos, each leading to its outline, light and colours; what else can be said of them. */
export function GarmentPhotos({
	garment,
	onOpen,
	onSplit,
}: {
	garment: Garment;
	onOpen: (photoId: string) => void;
	onSplit: (photoId: string) => void;
}) {
	const { photoIds, name } = garment;
	const photos = usePhotos(photoIds);
	const part = useChange((id: string) => call('partGarment', { params: { id: garment.id }, body: { photoId: id } }));
	const first = useChange((id: string) =>
		changeThing('changeGarment', garment.id, garment, { photoIds: [id, ...photoIds.filter((one) => one !== id)] }),
	);
	return (
		<div className="stack garment-photos">
			{photoIds.map((id, index) => (
				<div key={id} className="stack">
					<button type="button" className="tile-button" onClick={() => onOpen(id)}>
						<PhotoTile
							photoId={garment.swatches.length > 0 ? id : undefined}
							picture="display"
							alt={say('garment.photo', { number: index + 1, name })}
							shape="free"
						/>
						<span className="small photo-tools">{say('garment.tools')}</span>
					</button>
					<span className="row">
						<Button small look={photos.get(id)?.reading?.proposal ? 'main' : 'plain'} onPress={() => onSplit(id)}>
							{say(photos.get(id)?.reading?.proposal ? 'confirm.twoHere' : 'garment.showsTwo')}
						</Button>
						{photoIds.length > 1 ? (
							<Button small onPress={() => part.run(id)} isPending={part.busy}>
								{say('garment.isAnother')}
							</Button>
						) : null}
						{index > 0 ? (
							<Button small onPress={() => first.run(id)} isPending={first.busy}>
								{say('garment.showFirst')}
							</Button>
						) : null}
					</span>
				</div>
			))}
			{photoIds.length === 0 ? <p className="quiet">{say('garment.noPhoto')}</p> : null}
			<Problem of={part.problem ?? first.problem} />
		</div>
	);
}
