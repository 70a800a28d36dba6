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
import { TableScroll } from '../../parts/table-scroll.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';

const money = (value: number | null): string => (value === null ? say('fields.notTold') : moneyText(value));

type Line = {
	readonly label: string;
	readonly cell: (check: CandidateCheck, candidate: CandidateDetails) => ReactNode;
};

/** What is compared, line by line; `openWishes` are the ids of the wishes that are still open. */
const linesOf = (openWishes: ReadonlySet<string>): readonly Line[] => [
	{
		label: say('shopPage.recommendation'),
		cell: (check) => <span className="italic">{say(`recommendations.${check.recommendation}`)}</span>,
	},
	{ label: say('garments.fit'), cell: (check) => <VerdictMark {...check.fit} /> },
	{
		label: say('shopPage.colours'),
		cell: (check, { name }) => (
			<SwatchStrip
				swatches={check.fit.swatches.map(({ swatch }) => swatch)}
				label={say('shopPage.coloursOf', { name })}
			/>
		),
	},
	{
		label: say('shopPage.answersWish'),
		cell: ({ wishId }) =>
			wishId ? say(openWishes.has(wishId) ? 'shopPage.yes' : 'shopPage.pastOne') : say('shopPage.no'),
	},
	{ label: say('shopPage.twins'), cell: (check) => check.twins.length },
	{ label: say('shopPage.partners'), cell: (check) => check.partnerCount },
	{
		label: say('shopPage.outfitsAdded'),
		cell: (check) =>
			say('shopPage.ofMost', {
				outfits: outfitsText(check.outfitsAdded),
				share: percentText(check.shareOfBest),
			}),
	},
	{ label: say('fields.price'), cell: (_, { price }) => money(price) },
	{ label: say('shopPage.costAWear'), cell: (check) => money(check.expectedCostPerWear) },
];

/** Candidates side by side, line by line. */
export function Compare({ candidates, report }: { candidates: readonly CandidateDetails[]; report: Report }) {
	const checks = useQueries({
		queries: candidates.map(({ id }) => ({
			queryKey: ['check', id],
			queryFn: () => call('checkCandidate', { params: { id } }),
		})),
	});
	const lines = linesOf(new Set(report.wishes.map(({ wishId }) => wishId)));
	return (
		<section className="section" aria-labelledby="compare">
			<h2 id="compare">{say('shopPage.sideBySide')}</h2>
			<TableScroll label={say('shopPage.sideBySide')}>
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
						{lines.map(({ label, cell }) => (
							<tr key={label}>
								<th scope="row">{label}</th>
								{candidates.map((candidate, index) => {
									const check = checks[index]?.data;
									return <td key={candidate.id}>{check ? cell(check, candidate) : '…'}</td>;
								})}
							</tr>
						))}
					</tbody>
				</table>
			</TableScroll>
		</section>
	);
}
