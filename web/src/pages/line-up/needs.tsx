import type { Report } from '../../../../src/wardrobe/season/report.ts';

/** Pieces wanted and held, slot by slot, as stitches: filled for held, open for wanting. */
export function Needs({ report }: { report: Report }) {
	return (
		<ul className="needs" aria-label="Pieces held and wanted">
			{report.needs.map(({ slot, wanted, held }) => (
				<li key={slot}>
					<span>{slot}</span>
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
	);
}
