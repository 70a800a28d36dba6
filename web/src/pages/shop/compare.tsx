import { useQueries } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { outfitsText } from '../../../../src/wardrobe/pairs/outfit-range.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { CandidateCheck } from '../../../../src/wardrobe/wishes/candidate.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { percentText } from '../../parts/colour-text.ts';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { RECOMMENDATION_WORDS } from './recommendation.ts';

const money = (value: number | null): string => (value === null ? 'not told' : value.toFixed(2));

/** Candidates side by side, line by line. */
export function Compare({ candidates, report }: { candidates: readonly CandidateDetails[]; report: Report }) {
	const checks = useQueries({
		queries: candidates.map(({ id }) => ({
			queryKey: ['check', id],
			queryFn: () => call('checkCandidate', { params: { id: id } }),
		})),
	});
	const wishName = new Map(report.wishes.map(({ wishId, sentence }) => [wishId, sentence]));
	const row = (label: string, cell: (check: CandidateCheck, candidate: CandidateDetails) => ReactNode) => (
		<tr>
			<th scope="row">{label}</th>
			{candidates.map((candidate, index) => {
				const check = checks[index]?.data;
				return <td key={candidate.id}>{check ? cell(check, candidate) : '…'}</td>;
			})}
		</tr>
	);
	return (
		<section className="section" aria-labelledby="compare">
			<h2 id="compare">Side by side</h2>
			<div className="table-scroll">
				<table className="compare">
					<thead>
						<tr>
							<td />
							{candidates.map(({ id, name, photoId }) => (
								<th key={id} scope="col">
									<PhotoTile photoId={photoId} alt="" />
									{name}
								</th>
							))}
						</tr>
					</thead>
					<tbody>
						{row('Recommendation', (check) => (
							<span className="italic">{RECOMMENDATION_WORDS[check.recommendation]}</span>
						))}
						{row('Fit', (check) => (
							<VerdictMark {...check.fit} />
						))}
						{row('Colours', (check, { name }) => (
							<SwatchStrip swatches={check.fit.swatches.map(({ swatch }) => swatch)} label={`Colours of ${name}`} />
						))}
						{row('Answers a wish', (check) =>
							check.wishId ? (wishName.has(check.wishId) ? 'yes' : 'a past one') : 'no',
						)}
						{row('Twins owned', (check) => check.twins.length)}
						{row('Partners', (check) => check.partnerCount)}
						{row(
							'Outfits added',
							(check) => `${outfitsText(check.outfitsAdded)} (${percentText(check.shareOfBest)} of the most possible)`,
						)}
						{row('Price', (_, { price }) => money(price))}
						{row('Cost a wear, expected', (check) => money(check.expectedCostPerWear))}
					</tbody>
				</table>
			</div>
		</section>
	);
}
