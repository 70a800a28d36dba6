import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS, type Slot } from '../../../../src/wardrobe/words/slot.ts';
import { type SetChanges, swapIn } from './set-changes.ts';
import { SetPiece } from './set-piece.tsx';
import { SwapDialog } from './swap-dialog.tsx';

type Choosing = {
	readonly report: Report;
	readonly garments: readonly Garment[];
	readonly choice: LineUpChoice;
	readonly onChange: (changes: SetChanges) => void;
};

/** What is in the set of one sort, and what else of it is on the rail; nothing where there is neither. */
function OfSlot({
	slot,
	report,
	garments,
	choice,
	onChange,
	onSwap,
}: Choosing & { readonly slot: Slot; readonly onSwap: (garment: Garment) => void }) {
	const own = garments.filter(({ kind }) => slotOfKind(kind) === slot);
	if (own.length === 0) return null;
	const inside = new Set(choice.garmentIds);
	const chosen = own.filter(({ id }) => inside.has(id));
	const rest = own.filter(({ id }) => !inside.has(id));
	const partnersOf = new Map(report.garments.map((one) => [one.garmentId, one.partnerCount]));
	const piece = (garment: Garment) => (
		<SetPiece
			key={garment.id}
			garment={garment}
			choice={choice}
			partnerCount={partnersOf.get(garment.id) ?? 0}
			onChange={onChange}
			onSwap={() => onSwap(garment)}
		/>
	);
	return (
		<div className="line-up-slot">
			<h3>
				{say(`slots.${slot}`)}{' '}
				<span className="small quiet">
					{say('set.heads', { count: chosen.length, wanted: report.season.quotas[slot] })}
				</span>
			</h3>
			<ul className="tiles">{chosen.map(piece)}</ul>
			{rest.length > 0 ? (
				<details open={chosen.length === 0}>
					<summary>{say('set.moreOnRail', { count: rest.length })}</summary>
					<ul className="tiles">{rest.map(piece)}</ul>
				</details>
			) : null}
		</div>
	);
}

/** The garments of the line-up by slot, and those on the rail that are not in it. */
export function Chosen({ report, garments, choice, onChange }: Choosing) {
	const [swapping, setSwapping] = useState<Garment | null>(null);
	const inside = new Set(choice.garmentIds);
	const usable = garments.filter(({ id, place }) => place === 'rail' || inside.has(id));
	return (
		<section className="section" aria-labelledby="chosen">
			<h2 id="chosen">{say('set.theSet')}</h2>
			{SLOTS.map((slot) => (
				<OfSlot
					key={slot}
					slot={slot}
					report={report}
					garments={usable}
					choice={choice}
					onChange={onChange}
					onSwap={setSwapping}
				/>
			))}
			{swapping ? (
				<SwapDialog
					season={report.season}
					garment={swapping}
					garmentIds={choice.garmentIds}
					garments={usable}
					onSwap={(id) => {
						onChange(swapIn(choice, swapping.id, id));
						setSwapping(null);
					}}
					onClose={() => setSwapping(null)}
				/>
			) : null}
		</section>
	);
}
