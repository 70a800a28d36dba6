import { say } from '../../../../src/language/speak.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { PLACES, type Place } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import type { SortItem } from './sort-order.ts';

function RailItem({ item: { garment, said } }: { item: SortItem }) {
	const change = useChange((place: Place) => changeThing('changeGarment', garment.id, garment, { place }));
	return (
		<li className="tile rail-item" data-place={garment.place}>
			<GarmentPhoto garment={garment} shape="tall" />
			<span className="tile-name">{garment.name}</span>
			<SwatchStrip swatches={garment.swatches} label={`Colours of ${garment.name}`} />
			<VerdictMark {...said.fit} />
			<span className="small quiet">{counted(said.partnerCount, 'partner')}</span>
			<select
				className="select"
				aria-label={`Place of ${garment.name}`}
				value={garment.place}
				onChange={(event) => change.run(event.target.value as Place)}
			>
				{PLACES.map((place) => (
					<option key={place} value={place}>
						{place}
					</option>
				))}
			</select>
			{change.problem ? <span className="warn small">{change.problem.message}</span> : null}
		</li>
	);
}

/** A slot's garments side by side, best fit first, to compare like with like. */
export function RailView({ items }: { items: readonly SortItem[] }) {
	return (
		<>
			{SLOTS.map((slot) => {
				const own = items
					.filter(({ said }) => said.slot === slot)
					.sort((a, b) => b.said.fit.percent - a.said.fit.percent);
				if (own.length === 0) return null;
				return (
					<section key={slot} aria-labelledby={`rail-${slot}`}>
						<h2 id={`rail-${slot}`}>
							{say(`slots.${slot}`)} <span className="small quiet">{own.length}</span>
						</h2>
						<ul className="rail">
							{own.map((item) => (
								<RailItem key={item.garment.id} item={item} />
							))}
						</ul>
					</section>
				);
			})}
		</>
	);
}
