import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** Pieces wanted and held, slot by slot, as stitches: filled for held, open for wanting; the numbers wanted are set here. */
export function Needs({ report }: { report: Report }) {
	const { season, neededPieces } = report;
	const change = useChange((changes: Partial<Season>) => changeThing('changeSeason', season.id, season, changes));
	const want = (quotas: Season['quotas']) =>
		change.run({
			quotas,
			targetCount: Math.max(
				1,
				Object.values(quotas).reduce((sum, count) => sum + count, 0),
			),
		});
	const asNeeded = SLOTS.every((slot) => season.quotas[slot] === neededPieces[slot]);
	return (
		<div className="stack">
			<ul className="needs" aria-label="Pieces held and wanted">
				{report.needs.map(({ slot, wanted, held }) => (
					<li key={slot}>
						<span>{say(`slots.${slot}`)}</span>
						<span className="number">
							{held} of {wanted}
						</span>
						<span className="stitches" aria-hidden="true">
							{Array.from({ length: Math.min(24, Math.max(wanted, held)) }, (_, index) => {
								const kind = index < Math.min(held, wanted) ? 'held' : index < held ? 'over' : 'open';
								// Stitches are all alike.
								// biome-ignore lint/suspicious/noArrayIndexKey: see above
								return <i key={index} data-kind={kind} />;
							})}
						</span>
					</li>
				))}
			</ul>
			<p className="small">{report.enough.sentence}</p>
			<details>
				<summary>Change how many</summary>
				<div className="fields">
					{SLOTS.map((slot) => (
						<TextField
							key={slot}
							label={`${say(`slots.${slot}`)} wanted`}
							type="number"
							min={0}
							max={200}
							value={String(season.quotas[slot])}
							hint={`your days need ${neededPieces[slot]}`}
							onCommit={(text) =>
								want({ ...season.quotas, [slot]: Math.min(200, Math.max(0, Math.round(Number(text) || 0))) })
							}
						/>
					))}
				</div>
				{asNeeded ? null : <Button onPress={() => want(neededPieces)}>Take what the days need</Button>}
				<Problem of={change.problem} />
			</details>
		</div>
	);
}
