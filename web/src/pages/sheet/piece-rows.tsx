import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { mainSwatch } from '../../../../src/wardrobe/words/main-colour.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';

/** The pieces by slot, each with its picture, its main colour in words, its fit and how many others go with it. */
export function PieceRows({ pieces, report }: { pieces: readonly Garment[]; report: Report }) {
	const judged = new Map(report.garments.map((one) => [one.garmentId, one]));
	const wantedOf = new Map(report.needs.map(({ slot, wanted }) => [slot, wanted]));
	if (pieces.length === 0) return <p>Nothing is on the rail yet.</p>;
	return SLOTS.map((slot) => {
		const inSlot = pieces.filter(({ kind }) => slotOfKind(kind) === slot);
		const wanted = wantedOf.get(slot) ?? 0;
		if (inSlot.length === 0 && wanted === 0) return null;
		return (
			<div key={slot} className="paper-slot">
				<h3>
					{say(`slots.${slot}`)}: {inSlot.length} of {wanted} wanted
				</h3>
				<ul className="paper-pieces">
					{inSlot.map((garment) => {
						const { fit, partnerCount } = judged.get(garment.id) ?? {};
						return (
							<li key={garment.id}>
								<GarmentPhoto garment={garment} />
								<span className="paper-words">
									<b>{garment.name}</b>
									<span>{mainSwatch(garment)?.name ?? 'colour not read yet'}</span>
									{fit ? <VerdictMark {...fit} /> : null}
									{partnerCount === undefined ? null : <span>goes with {counted(partnerCount, 'other')}</span>}
								</span>
							</li>
						);
					})}
				</ul>
			</div>
		);
	});
}
