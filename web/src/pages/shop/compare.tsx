import { useQueries } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { moneyText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import { outfitsText } from '../../../../src/wardrobe/pairs/outfit-range.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { CandidateCheck } from '../../../../src/wardrobe/wishes/candidate.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { percentText } from '../../parts/colour-text.ts';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';

const money = (value: number | null): string => (value === null ? say('fields.notTold') : moneyText(value));

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
			<h2 id="compare">{say('shopPage.sideBySide')}</h2>
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
						{row(say('shopPage.recommendation'), (check) => (
							<span className="italic">{say(`recommendations.${check.recommendation}`)}</span>
						))}
						{row(say('garments.fit'), (check) => (
							<VerdictMark {...check.fit} />
						))}
						{row(say('shopPage.colours'), (check, { name }) => (
							<SwatchStrip
								swatches={check.fit.swatches.map(({ swatch }) => swatch)}
								label={say('shopPage.coloursOf', { name })}
							/>
						))}
						{row(say('shopPage.answersWish'), (check) =>
							check.wishId ? say(wishName.has(check.wishId) ? 'shopPage.yes' : 'shopPage.pastOne') : say('shopPage.no'),
						)}
						{row(say('shopPage.twins'), (check) => check.twins.length)}
						{row(say('shopPage.partners'), (check) => check.partnerCount)}
						{row(say('shopPage.outfitsAdded'), (check) =>
							say('shopPage.ofMost', {
								outfits: outfitsText(check.outfitsAdded),
								share: percentText(check.shareOfBest),
							}),
						)}
						{row(say('fields.price'), (_, { price }) => money(price))}
						{row(say('shopPage.costAWear'), (check) => money(check.expectedCostPerWear))}
					</tbody>
				</table>
			</div>
		</section>
	);
}
