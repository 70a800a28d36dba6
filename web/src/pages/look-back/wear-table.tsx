import { useState } from 'react';
import { dayText, moneyText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import type { GarmentReport } from '../../../../src/wardrobe/season/garment-report.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { TableScroll } from '../../parts/table-scroll.tsx';

type Order = 'most' | 'least' | 'cost' | 'slot';

const SHOWN = 20;

const compare: Readonly<Record<Order, (a: GarmentReport, b: GarmentReport) => number>> = {
	most: (a, b) => b.wear.wearsThisYear - a.wear.wearsThisYear,
	least: (a, b) => a.wear.wearsThisYear - b.wear.wearsThisYear,
	cost: (a, b) => (b.wear.costPerWear ?? -1) - (a.wear.costPerWear ?? -1),
	slot: (a, b) => a.slot.localeCompare(b.slot) || b.wear.wearsThisYear - a.wear.wearsThisYear,
};

/** One garment; `most` is the longest bar, in wears. */
function WearRow({ row: { name, wear }, most }: { row: GarmentReport; most: number }) {
	return (
		<tr>
			<th scope="row">{name}</th>
			<td>
				<span className="wear-bar" style={{ width: `${(70 * wear.wearsThisYear) / most}%` }} aria-hidden="true" />
				<span className="number">{wear.wearsThisYear}</span>
			</td>
			<td>
				{wear.lastWorn ? dayText(wear.lastWorn) : <span className="quiet">{say('lookBackPage.neverNoted')}</span>}
			</td>
			<td className="figure">
				{wear.costPerWear === null ? (
					<span className="quiet">{say('lookBackPage.notKnown')}</span>
				) : (
					moneyText(wear.costPerWear)
				)}
			</td>
		</tr>
	);
}

function WearHead() {
	return (
		<thead>
			<tr>
				<th scope="col">{say('lookBackPage.garment')}</th>
				<th scope="col">{say('lookBackPage.wearsOfYear')}</th>
				<th scope="col">{say('lookBackPage.lastWorn')}</th>
				<th scope="col" className="figure">
					{say('lookBackPage.costAWear')}
				</th>
			</tr>
		</thead>
	);
}

/** Wears of each garment as bars with their figures: how often, when last, what a wear cost. */
export function WearTable({ report, garments }: { report: Report; garments: readonly Garment[] }) {
	const [order, setOrder] = useState<Order>('most');
	const [limit, setLimit] = useState(SHOWN);
	const here = new Set(garments.filter(({ place }) => place !== 'gone').map(({ id }) => id));
	const rows = report.garments
		.filter(({ garmentId }) => here.has(garmentId))
		.sort((a, b) => compare[order](a, b) || a.name.localeCompare(b.name));
	const most = Math.max(1, ...rows.map(({ wear }) => wear.wearsThisYear));
	if (rows.length === 0) return null;
	return (
		<section className="section" aria-labelledby="by-garment">
			<div className="row">
				<h2 id="by-garment">{say('lookBackPage.byGarment')}</h2>
				<span className="row-end">
					<SelectField
						label={say('garments.order')}
						value={order}
						options={[
							{ value: 'most', label: say('lookBackPage.mostFirst') },
							{ value: 'least', label: say('lookBackPage.leastFirst') },
							{ value: 'cost', label: say('lookBackPage.dearestFirst') },
							{ value: 'slot', label: say('lookBackPage.slotFirst') },
						]}
						onChange={setOrder}
					/>
				</span>
			</div>
			<TableScroll label={say('lookBackPage.byGarment')}>
				<table className="wear-table">
					<WearHead />
					<tbody>
						{rows.slice(0, limit).map((row) => (
							<WearRow key={row.garmentId} row={row} most={most} />
						))}
					</tbody>
				</table>
			</TableScroll>
			{rows.length > limit ? (
				<Button onPress={() => setLimit(rows.length)}>{say('lookBackPage.showAll', { count: rows.length })}</Button>
			) : null}
		</section>
	);
}
