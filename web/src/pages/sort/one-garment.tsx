import { say } from '../../../../src/language/speak.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import type { SortItem } from './sort-order.ts';

/** The garment that is being decided on: its photo, its name, and what is suggested. */
export function OneGarment({ item: { garment, said } }: { item: SortItem }) {
	return (
		<>
			<GarmentPhoto garment={garment} picture="display" alt={garment.name} shape="square" />
			<div className="sort-words">
				<h2>{garment.name}</h2>
				<p className="quiet">
					{say('sort.now', { kind: say(`kinds.${garment.kind}`), place: say(`whereabouts.${garment.place}`) })}
				</p>
				<SwatchStrip swatches={garment.swatches} label={say('garments.coloursOf', { name: garment.name })} />
				<div className="sort-suggestion">
					<p className="italic">{say('sort.suggested')}</p>
					<p>{said.sorting.sentence}</p>
				</div>
			</div>
		</>
	);
}
