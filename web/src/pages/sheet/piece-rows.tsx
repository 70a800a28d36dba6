import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { SLOTS, type Slot } from '../../../../src/wardrobe/words/slot.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';

type Judged = ReadonlyMap<string, Report['garments'][number]>;

/** One piece: its picture and name; its fit only where something is to be said of it. */
function PieceRow({ garment, judged }: { garment: Garment; judged: Judged }) {
	const fit = judged.get(garment.id)?.fit;
	return (
		<li>
			<GarmentPhoto garment={garment} eager />
			<span className="paper-words">
				<b>{garment.name}</b>
				{garment.swatches.length === 0 ? <span>{say('sheet.notRead')}</span> : null}
				{fit && fit.verdict !== 'fits' ? (
					<VerdictMark verdict={fit.verdict} likely={fit.likely} swatches={fit.swatches} />
				) : null}
			</span>
		</li>
	);
}

/** The pieces by sort, each with its picture. */
export function PieceRows({ pieces, report }: { pieces: readonly Garment[]; report: Report }) {
	const judged: Judged = new Map(report.garments.map((one) => [one.garmentId, one]));
	const wantedOf = new Map(report.needs.map(({ slot, wanted }) => [slot, wanted]));
	const inSlot = (slot: Slot) => pieces.filter(({ kind }) => slotOfKind(kind) === slot);
	if (pieces.length === 0) return <p>{say('sheet.nothing')}</p>;
	return (
		<div className="paper-slots">
			{SLOTS.filter((slot) => inSlot(slot).length > 0 || (wantedOf.get(slot) ?? 0) > 0).map((slot) => (
				<div key={slot} className="paper-slot">
					<h3>
						{say('sheet.ofWanted', {
							slot: say(`slots.${slot}`),
							count: inSlot(slot).length,
							wanted: wantedOf.get(slot) ?? 0,
						})}
					</h3>
					<ul className="paper-pieces">
						{inSlot(slot).map((garment) => (
							<PieceRow key={garment.id} garment={garment} judged={judged} />
						))}
					</ul>
				</div>
			))}
		</div>
	);
}
