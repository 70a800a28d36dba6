import { useMemo } from 'react';
import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import { weightsOf } from '../../../../src/wardrobe/words/line-up-weights.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { WovenBands } from '../../charts/woven-bands.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { BuildTools } from './build-tools.tsx';
import { Chosen } from './chosen.tsx';
import { FixedPieces } from './fixed-pieces.tsx';
import { MissingPieces } from './missing-pieces.tsx';
import { Outfits } from './outfits.tsx';
import { ResultWords } from './result-words.tsx';
import { useSet } from './use-line-up.ts';
import { Wanted } from './wanted.tsx';
import './line-up.css';

/** What stands instead of a set: nothing to choose from, or nothing chosen. */
function NoSet({ seasonId, isEmpty }: { seasonId: string; isEmpty: boolean }) {
	if (!isEmpty)
		return (
			<Empty title={say('set.none')}>
				<p>{say('set.noneHow')}</p>
			</Empty>
		);
	return (
		<Empty title={say('set.noRail')}>
			<p>{say('set.noRailHow')}</p>
			<p>
				<Link href={addressOf(seasonId, 'sort')}>{say('set.toSort')}</Link>
			</p>
		</Empty>
	);
}

/** The small set for the season: built, pinned, swapped, with its outfits and bands. */
export default function LineUpPage({ report }: PageProps) {
	const { season } = report;
	const { data: garments = [] } = useGarments();
	const { choice, ...set } = useSet(season.id);
	const byId = useMemo(() => new Map(garments.map((garment) => [garment.id, garment])), [garments]);
	const rail = useMemo(() => garments.filter(({ place }) => place === 'rail'), [garments]);
	const chosen = useMemo(() => choice?.garmentIds.flatMap((id) => byId.get(id) ?? []) ?? [], [choice, byId]);
	if (!choice) return set.error ? <Problem of={set.error} /> : <Loading what={say('set.loading')} />;
	const nameOf = (id: string) => byId.get(id)?.name ?? say('set.gone');
	const isEmpty = rail.length === 0;
	return (
		<div className="page-body">
			<PageTitle name={say('places.line-up')} purpose={purposeOf('line-up')}>
				<BuildTools
					hasSet={chosen.length > 0}
					isEmpty={isEmpty}
					building={set.building}
					onBuild={set.build}
					proof={set.proof}
					onProve={set.prove}
				/>
			</PageTitle>
			<Problem of={set.problem} />
			<p className="line-up-sum" role="status">
				{report.held.sentence}
			</p>
			{set.result ? <ResultWords result={set.result} weights={weightsOf(season)} onTake={set.takeBetter} /> : null}
			<Wanted report={report} garments={garments} garmentIds={choice.garmentIds} />
			<FixedPieces choice={choice} garments={garments} nameOf={nameOf} onChange={set.change} />
			{chosen.length === 0 ? <NoSet seasonId={season.id} isEmpty={isEmpty} /> : null}
			<WovenBands bands={report.bands} palette={report.palette} nameOf={nameOf} />
			<Chosen report={report} garments={garments} choice={choice} onChange={set.change} />
			<Outfits report={report} garments={chosen.length > 0 ? chosen : rail} />
			<MissingPieces report={report} />
			<NextStepLink report={report} place="line-up" />
		</div>
	);
}
