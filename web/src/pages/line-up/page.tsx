import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import type { LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import { weightsOf } from '../../../../src/wardrobe/words/line-up-weights.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { useGarments, useLineUp } from '../../api/wardrobe.ts';
import { WovenBands } from '../../charts/woven-bands.tsx';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { Chosen } from './chosen.tsx';
import { MissingPieces } from './missing-pieces.tsx';
import { Needs } from './needs.tsx';
import { Outfits } from './outfits.tsx';
import { PROOF_SECONDS, useProof } from './proof.ts';
import { ResultWords } from './result-words.tsx';
import './line-up.css';

/** The small set for the season: built, pinned, swapped, with its outfits and bands. */
export default function LineUpPage({ report }: PageProps) {
	const { season } = report;
	const { data: garments = [] } = useGarments();
	const { data: choice, error } = useLineUp(season.id);
	const [result, setResult] = useState<LineUpResult | null>(null);
	const byId = useMemo(() => new Map(garments.map((garment) => [garment.id, garment])), [garments]);
	const save = useChange((next: Partial<LineUpChoice>) => changeThing('chooseLineUp', season.id, choice ?? {}, next));
	const words = { mustKeep: choice?.mustKeep ?? [], neverUse: choice?.neverUse ?? [] };
	const build = useChange(async () => {
		const built = await call('buildLineUp', { params: { id: season.id }, body: words });
		await changeThing('chooseLineUp', season.id, choice ?? {}, { garmentIds: built.garmentIds });
		return built;
	}, setResult);
	const proof = useProof(season.id, setResult);
	if (!choice) return error ? <Problem of={error} /> : <Loading what="the line-up" />;
	const chosen = choice.garmentIds.flatMap((id) => byId.get(id) ?? []);
	const nameOf = (id: string) => byId.get(id)?.name ?? 'a garment no longer here';
	const change = (next: Partial<LineUpChoice>) => {
		setResult(null);
		save.run(next);
	};
	const rail = garments.filter(({ place }) => place === 'rail').length;
	return (
		<div className="page-body">
			<PageTitle name={say('places.line-up')} purpose={purposeOf('line-up')}>
				<span className="row">
					<Button look="main" onPress={() => build.run(undefined)} isPending={build.busy} isDisabled={rail === 0}>
						{build.busy ? 'Searching …' : chosen.length === 0 ? 'Build a line-up' : 'Build it anew'}
					</Button>
					{proof.secondsGone === null ? (
						<Button
							onPress={() => proof.start({ ...words, garmentIds: choice.garmentIds })}
							isDisabled={rail === 0 || build.busy}
						>
							Prove it
						</Button>
					) : (
						<>
							<progress max={PROOF_SECONDS} value={proof.secondsGone} aria-label="Proving the set" />
							<Button onPress={proof.stop}>Stop</Button>
						</>
					)}
				</span>
			</PageTitle>
			<Problem of={build.problem ?? save.problem ?? proof.problem} />
			<p className="line-up-sum" role="status">
				{report.held.sentence}
			</p>
			{result ? (
				<ResultWords
					result={result}
					weights={weightsOf(season)}
					onTake={(better) => {
						change({ garmentIds: better.garmentIds });
						setResult({ ...better, better: null });
					}}
				/>
			) : null}
			<Needs report={report} />
			{rail === 0 ? (
				<Empty title="Nothing on the rail">
					<p>
						The line-up is chosen from what is on the rail. Add garments, or{' '}
						<Link href={addressOf(season.id, 'sort')}>sort</Link> some back onto it.
					</p>
				</Empty>
			) : chosen.length === 0 ? (
				<Empty title="No line-up yet">
					<p>Build one, or put garments in one by one below. Until then, outfits and bands count the whole rail.</p>
				</Empty>
			) : null}
			<WovenBands bands={report.bands} palette={report.palette} nameOf={nameOf} />
			<Chosen report={report} garments={garments} choice={choice} onChange={change} />
			<Outfits
				report={report}
				garments={chosen.length > 0 ? chosen : garments.filter(({ place }) => place === 'rail')}
			/>
			<MissingPieces report={report} />
			<NextStepLink report={report} place="line-up" />
		</div>
	);
}
