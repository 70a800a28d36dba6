import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { PLACES, type Place } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS, type Slot } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Choices } from '../../parts/choices.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import type { SortItem } from './sort-order.ts';

/** What the rail shows: pieces of one place, or all that are here. */
const SHOWN = ['rail', 'stored', 'leaving', 'all'] as const;
type Shown = (typeof SHOWN)[number];

function RailItem({ item: { garment, said } }: { item: SortItem }) {
	const change = useChange((place: Place) => changeThing('changeGarment', garment.id, garment, { place }));
	return (
		<li className="tile rail-item" data-place={garment.place}>
			<GarmentPhoto garment={garment} shape="tall" />
			<span className="tile-name">{garment.name}</span>
			<SwatchStrip swatches={garment.swatches} label={say('garments.coloursOf', { name: garment.name })} />
			<VerdictMark {...said.fit} brief />
			<span className="small quiet">{say('garments.partners', { count: said.partnerCount })}</span>
			<select
				className="select rail-place"
				aria-label={say('sort.placeOf', { name: garment.name })}
				value={garment.place}
				onChange={(event) => change.run(event.target.value as Place)}
			>
				{PLACES.map((place) => (
					<option key={place} value={place}>
						{say(`whereabouts.${place}`)}
					</option>
				))}
			</select>
			{change.problem ? <span className="warn small">{change.problem.message}</span> : null}
		</li>
	);
}

function RailOfSlot({ slot, items }: { slot: Slot; items: readonly SortItem[] }) {
	if (items.length === 0) return null;
	return (
		<section aria-labelledby={`rail-${slot}`}>
			<h2 id={`rail-${slot}`}>
				{say(`slots.${slot}`)} <span className="small quiet">{items.length}</span>
			</h2>
			{/* biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls is scrolled by keyboard, too */}
			<ul className="rail" tabIndex={0} aria-labelledby={`rail-${slot}`}>
				{items.map((item) => (
					<RailItem key={item.garment.id} item={item} />
				))}
			</ul>
		</section>
	);
}

/** A slot's garments side by side, best fit first, to compare like with like: those of one place, unless all are asked for. */
export function RailView({ items }: { items: readonly SortItem[] }) {
	const [shown, setShown] = useState<Shown>('rail');
	const own = items
		.filter(({ garment }) => shown === 'all' || garment.place === shown)
		.sort((a, b) => b.said.fit.percent - a.said.fit.percent);
	return (
		<>
			<Choices
				small
				label={say('sort.whichPlace')}
				value={shown}
				options={SHOWN.map((place) => [place, place === 'all' ? say('sort.everywhere') : say(`whereabouts.${place}`)])}
				onChange={setShown}
			/>
			{SLOTS.map((slot) => (
				<RailOfSlot key={slot} slot={slot} items={own.filter(({ said }) => said.slot === slot)} />
			))}
		</>
	);
}
