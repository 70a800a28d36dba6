import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import type { Wear } from '../../../../src/wardrobe/words/wear.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { useWears } from '../../api/wardrobe.ts';
import { Empty } from '../../parts/empty.tsx';
import { TextField } from '../../parts/field.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { Problem } from '../../parts/problem.tsx';

/** Tap what was worn: once to note it, once more to take it back. Any day up to today. */
export function WornToday({ garments, today }: { garments: readonly Garment[]; today: string }) {
	const [day, setDay] = useState(today);
	const { data: wears = [] } = useWears(day, day);
	const worn = new Set(wears.map(({ garmentId }) => garmentId));
	const toggle = useChange<Wear, unknown>((wear) =>
		worn.has(wear.garmentId) ? call('removeWear', { body: wear }) : call('noteWears', { body: { wears: [wear] } }),
	);
	const usable = garments
		// What was worn that day is shown, wherever it is now: the count is of what stands here.
		.filter(({ id, place }) => place === 'rail' || place === 'stored' || worn.has(id))
		.sort(
			(a, b) =>
				Number(a.place !== 'rail') - Number(b.place !== 'rail') ||
				SLOTS.indexOf(slotOfKind(a.kind)) - SLOTS.indexOf(slotOfKind(b.kind)) ||
				a.name.localeCompare(b.name),
		);
	return (
		<section className="section" aria-labelledby="worn-today">
			<div className="row">
				<h2 id="worn-today">{day === today ? say('lookBackPage.wornToday') : say('lookBackPage.wornThatDay')}</h2>
				<span role="status">{say('counts.garments', { count: usable.filter(({ id }) => worn.has(id)).length })}</span>
				<span className="row-end">
					<TextField
						label={say('lookBackPage.day')}
						type="date"
						max={today}
						value={day}
						onCommit={(next) => setDay(next !== '' && next <= today ? next : today)}
					/>
				</span>
			</div>
			<Problem of={toggle.problem} />
			{usable.length === 0 ? (
				<Empty title={say('lookBackPage.noGarment')}>
					<p>{say('lookBackPage.noGarmentHow')}</p>
				</Empty>
			) : (
				<ul className="wear-tiles">
					{usable.map((garment) => (
						<li key={garment.id}>
							<button
								type="button"
								className="tile-button wear-tile"
								aria-pressed={worn.has(garment.id)}
								onClick={() => toggle.run({ garmentId: garment.id, on: day })}
							>
								<GarmentPhoto garment={garment} />
								<span className="small tile-name">{garment.name}</span>
								<span className="wear-mark" aria-hidden="true">
									{worn.has(garment.id) ? say('lookBackPage.worn') : ''}
								</span>
							</button>
						</li>
					))}
				</ul>
			)}
		</section>
	);
}
