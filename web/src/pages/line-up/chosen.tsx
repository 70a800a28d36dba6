import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { Button } from '../../parts/button.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { SwapDialog } from './swap-dialog.tsx';

type Changes = Partial<Pick<LineUpChoice, 'garmentIds' | 'mustKeep' | 'neverUse'>>;

const without = (ids: readonly string[], id: string) => ids.filter((one) => one !== id);

/** The garments of the line-up by slot, and those on the rail that are not in it. */
export function Chosen({
	report,
	garments,
	choice,
	onChange,
}: {
	report: Report;
	garments: readonly Garment[];
	choice: LineUpChoice;
	onChange: (changes: Changes) => void;
}) {
	const [swapping, setSwapping] = useState<Garment | null>(null);
	const { garmentIds, mustKeep, neverUse } = choice;
	const said = new Map(report.garments.map((one) => [one.garmentId, one]));
	const inside = new Set(garmentIds);
	const usable = garments.filter(({ id, place }) => place === 'rail' || inside.has(id));
	const tile = (garment: Garment) => {
		const { id, name } = garment;
		const pinned = mustKeep.includes(id);
		const never = neverUse.includes(id);
		return (
			<li key={id} className="tile" data-inside={inside.has(id)}>
				<GarmentPhoto garment={garment} picture={inside.has(id) ? 'cutout' : 'thumb'} />
				<span className="tile-name">{name}</span>
				<SwatchStrip swatches={garment.swatches} label={`Colours of ${name}`} />
				<span className="small quiet">{counted(said.get(id)?.partnerCount ?? 0, 'partner')}</span>
				<span className="row tile-actions">
					{inside.has(id) ? (
						<>
							<Button
								small
								pressed={pinned}
								onPress={() =>
									onChange({
										mustKeep: pinned ? without(mustKeep, id) : [...mustKeep, id],
										neverUse: without(neverUse, id),
									})
								}
								aria-label={`Pin ${name}`}
							>
								{pinned ? 'Pinned' : 'Pin'}
							</Button>
							<Button small onPress={() => setSwapping(garment)} aria-label={`Swap ${name}`}>
								Swap
							</Button>
							<Button
								small
								onPress={() => onChange({ garmentIds: without(garmentIds, id), mustKeep: without(mustKeep, id) })}
								aria-label={`Take ${name} out`}
							>
								Out
							</Button>
						</>
					) : (
						<>
							<Button
								small
								onPress={() => onChange({ garmentIds: [...garmentIds, id], neverUse: without(neverUse, id) })}
								aria-label={`Put ${name} in`}
							>
								In
							</Button>
							<Button
								small
								pressed={never}
								onPress={() => onChange({ neverUse: never ? without(neverUse, id) : [...neverUse, id] })}
								aria-label={`Never use ${name}`}
							>
								{never ? 'Never used' : 'Never'}
							</Button>
						</>
					)}
				</span>
			</li>
		);
	};
	return (
		<section className="section" aria-labelledby="chosen">
			<h2 id="chosen">The set</h2>
			{SLOTS.map((slot) => {
				const own = usable.filter(({ kind }) => slotOfKind(kind) === slot);
				if (own.length === 0) return null;
				const chosen = own.filter(({ id }) => inside.has(id));
				const rest = own.filter(({ id }) => !inside.has(id));
				return (
					<div key={slot} className="line-up-slot">
						<h3>
							{say(`slots.${slot}`)}{' '}
							<span className="small quiet">
								{chosen.length} in, {report.season.quotas[slot]} wanted
							</span>
						</h3>
						<ul className="tiles">{chosen.map(tile)}</ul>
						{rest.length > 0 ? (
							<details open={chosen.length === 0}>
								<summary>{counted(rest.length, 'more', 'more')} on the rail</summary>
								<ul className="tiles">{rest.map(tile)}</ul>
							</details>
						) : null}
					</div>
				);
			})}
			{swapping ? (
				<SwapDialog
					season={report.season}
					garment={swapping}
					garmentIds={garmentIds}
					garments={usable}
					onSwap={(id) => {
						onChange({
							garmentIds: [...without(garmentIds, swapping.id), id],
							mustKeep: without(mustKeep, swapping.id),
						});
						setSwapping(null);
					}}
					onClose={() => setSwapping(null)}
				/>
			) : null}
		</section>
	);
}
