import { useEffect, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { Quotas, Season } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS, type Slot } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

const MOST = 200;
const totalOf = (quotas: Quotas): number => Object.values(quotas).reduce((sum, count) => sum + count, 0);
const countFrom = (text: string): number => Math.min(MOST, Math.max(0, Math.round(Number(text) || 0)));

/** Stitches: filled for what is in the set, half for what is in beyond what is wanted, open for what is wanted. */
function Stitches({ wanted, held }: { wanted: number; held: number }) {
	return (
		<span className="stitches" aria-hidden="true">
			{Array.from({ length: Math.min(24, Math.max(wanted, held)) }, (_, index) => {
				const kind = index < Math.min(held, wanted) ? 'held' : index < held ? 'over' : 'open';
				// Stitches are all alike.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				return <i key={index} data-kind={kind} />;
			})}
		</span>
	);
}

function WantedOfSlot({
	slot,
	wanted,
	needed,
	garments,
	inside,
	onType,
}: {
	slot: Slot;
	wanted: number;
	needed: number;
	garments: readonly Garment[];
	inside: ReadonlySet<string>;
	onType: (wanted: number) => void;
}) {
	const own = garments.filter(({ kind }) => slotOfKind(kind) === slot);
	const held = own.filter(({ id }) => inside.has(id)).length;
	const rail = own.filter(({ id, place }) => place === 'rail' || inside.has(id)).length;
	return (
		<li>
			<TextField
				live
				label={say('set.wantedOf', { slot: say(`slots.${slot}`) })}
				type="number"
				min={0}
				max={MOST}
				value={String(wanted)}
				hint={say('set.daysNeed', { count: needed })}
				onCommit={(text) => onType(countFrom(text))}
			/>
			<span className="small">{say('set.inSet', { count: held, rail })}</span>
			<Stitches wanted={wanted} held={held} />
		</li>
	);
}

/** How many of each are wanted, what is in the set and on the rail of it; the total follows while it is typed, and is kept on leaving. */
export function Wanted({
	report,
	garments,
	garmentIds,
}: {
	report: Report;
	garments: readonly Garment[];
	garmentIds: readonly string[];
}) {
	const { season, neededPieces } = report;
	const [quotas, setQuotas] = useState(season.quotas);
	useEffect(() => setQuotas(season.quotas), [season.quotas]);
	const change = useChange((changes: Partial<Season>) => changeThing('changeSeason', season.id, season, changes));
	const keep = (next: Quotas) => {
		setQuotas(next);
		if (SLOTS.some((slot) => next[slot] !== season.quotas[slot]))
			change.run({ quotas: next, targetCount: Math.max(1, totalOf(next)) });
	};
	const inside = new Set(garmentIds);
	return (
		<section className="stack" aria-labelledby="wanted" onBlur={() => keep(quotas)}>
			<h2 id="wanted">{say('set.wanted')}</h2>
			<ul className="needs">
				{SLOTS.map((slot) => (
					<WantedOfSlot
						key={slot}
						slot={slot}
						wanted={quotas[slot]}
						needed={neededPieces[slot]}
						garments={garments}
						inside={inside}
						onType={(wanted) => setQuotas({ ...quotas, [slot]: wanted })}
					/>
				))}
			</ul>
			<p className="row">
				<strong role="status">{say('set.total', { count: totalOf(quotas) })}</strong>
				{SLOTS.every((slot) => quotas[slot] === neededPieces[slot]) ? null : (
					<Button small onPress={() => keep(neededPieces)}>
						{say('set.asDays')}
					</Button>
				)}
			</p>
			<p className="small">{report.enough.sentence}</p>
			<Problem of={change.problem} />
		</section>
	);
}
