import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';

/** The cut-out photos of an outfit laid on mid-grey as on a bed: outer piece beside, top over bottom, shoes at the foot. */
export function FlatLay({ pieces }: { pieces: readonly Garment[] }) {
	const slots = pieces.map(({ kind }) => slotOfKind(kind));
	return (
		<span className="flat-lay" data-outer={slots.includes('outer')}>
			{pieces.map((garment, index) => (
				<span key={garment.id} className={`lay lay-${slots[index]}`}>
					<GarmentPhoto garment={garment} picture="cutout" shape="free" />
				</span>
			))}
		</span>
	);
}
