import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { downloadOf } from '../../api/call.ts';
import { useCandidates } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { DropZone } from '../../uploads/drop-zone.tsx';
import { addUploads } from '../../uploads/upload-queue.ts';
import { CandidateCard } from './candidate-card.tsx';
import { Compare } from './compare.tsx';
import { CropDialog } from './crop-dialog.tsx';
import './shop.css';

/** The pieces that are still to be decided, newest first. */
function OpenCandidates({
	open,
	report,
	compared,
	onCompare,
}: {
	open: readonly CandidateDetails[];
	report: Report;
	compared: readonly string[];
	onCompare: (ids: readonly string[]) => void;
}) {
	return (
		<section aria-label={say('shopPage.candidates')}>
			<ul className="candidates">
				{open.map((candidate) => (
					<li key={candidate.id}>
						<CandidateCard
							candidate={candidate}
							report={report}
							compared={compared.includes(candidate.id)}
							onCompare={(on) =>
								onCompare(on ? [...compared, candidate.id] : compared.filter((id) => id !== candidate.id))
							}
						/>
					</li>
				))}
			</ul>
		</section>
	);
}

/** The pieces that were bought or passed over. */
function PastCandidates({ past }: { past: readonly CandidateDetails[] }) {
	if (past.length === 0) return null;
	return (
		<section className="section" aria-labelledby="past">
			<h2 id="past">{say('shopPage.past')}</h2>
			<ul>
				{past.map(({ id, name, state, source }) => (
					<li key={id}>
						{name}{' '}
						<span className="quiet">
							{state === 'bought' ? say('shopPage.nowGarment') : say('shopPage.passedWord')}
							{source ? `, ${source}` : ''}
						</span>
					</li>
				))}
			</ul>
		</section>
	);
}

/** Photos of pieces for sale, each cut to the piece before it is read. */
function PhotosIn({ seasonId }: { seasonId: string }) {
	const [cropping, setCropping] = useState<readonly File[]>([]);
	const [first, ...rest] = cropping;
	return (
		<>
			<DropZone label={say('shopPage.aCandidate')} onPhotos={setCropping}>
				<span className="small quiet row-end">{say('shopPage.screenshot')}</span>
			</DropZone>
			{first ? (
				<CropDialog
					key={`${first.name} ${cropping.length}`}
					file={first}
					left={rest.length}
					onUse={(file) => {
						addUploads([file], 'candidate', seasonId);
						setCropping(rest);
					}}
					onClose={() => setCropping([])}
				/>
			) : null}
		</>
	);
}

/** Pieces found for sale, checked against palette, wishes and wardrobe before anything is bought. */
export default function ShopPage({ report }: PageProps) {
	const { season } = report;
	const { data, error } = useCandidates(season.id);
	const candidates = data ?? [];
	const [compared, setCompared] = useState<readonly string[]>([]);
	const open = candidates.filter(({ state }) => state === 'open').sort((a, b) => (a.addedAt < b.addedAt ? 1 : -1));
	const past = candidates.filter(({ state }) => state !== 'open');
	const beside = open.filter(({ id }) => compared.includes(id));
	return (
		<div className="page-body">
			<PageTitle name={say('places.shop')} purpose={purposeOf('shop')}>
				<a className="button" href={downloadOf('getPocketPage', { params: { id: season.id } })}>
					{say('shopPage.pocket')}
				</a>
			</PageTitle>
			<PhotosIn seasonId={season.id} />
			<Problem of={error} />
			{open.length === 0 && data ? (
				<Empty title={say('shopPage.none')}>
					<p>{say('shopPage.noneHow')}</p>
				</Empty>
			) : (
				<OpenCandidates open={open} report={report} compared={compared} onCompare={setCompared} />
			)}
			{beside.length > 1 ? <Compare candidates={beside} report={report} /> : null}
			{compared.length === 1 ? <p className="small quiet">{say('shopPage.tickAnother')}</p> : null}
			{compared.length > 0 ? (
				<Button small onPress={() => setCompared([])}>
					{say('shopPage.compareNone')}
				</Button>
			) : null}
			<PastCandidates past={past} />
			<NextStepLink report={report} place="shop" />
		</div>
	);
}
