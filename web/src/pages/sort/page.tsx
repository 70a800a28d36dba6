import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { Choices } from '../../parts/choices.tsx';
import { Empty } from '../../parts/empty.tsx';
import { LastYearNotes } from '../../parts/last-year-notes.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SurerPhotos } from '../../parts/surer-photos.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { AllSorted } from './all-sorted.tsx';
import { GroupView } from './group-view.tsx';
import { Leaving } from './leaving.tsx';
import { OneByOne } from './one-by-one.tsx';
import { RailView } from './rail-view.tsx';
import { isDecided, sortOrder } from './sort-order.ts';
import { SortProgress } from './sort-progress.tsx';
import { useSorting } from './use-sorting.ts';
import './sort.css';

const VIEWS = [
	['groups', 'sort.inGroups'],
	['one', 'sort.oneByOne'],
	['rail', 'sort.rail'],
] as const;

/** Every garment gets its place: on the rail, stored, or leaving. The program suggests, the user decides. */
export default function SortPage({ report }: PageProps) {
	const seasonId = report.season.id;
	const { data: garments = [] } = useGarments();
	const [view, setView] = useState<(typeof VIEWS)[number][0]>('groups');
	const sorting = useSorting(seasonId);
	const items = useMemo(() => {
		const said = new Map(report.garments.map((one) => [one.garmentId, one]));
		return sortOrder(
			garments.flatMap((garment) => {
				const own = said.get(garment.id);
				return own ? [{ garment, said: own }] : [];
			}),
		);
	}, [garments, report]);
	const left = items.filter((item) => !isDecided(item, seasonId));
	const views = {
		groups: () => <GroupView left={left} sorting={sorting} />,
		one: () => <OneByOne left={left} report={report} sorting={sorting} />,
	};
	return (
		<div className="page-body sort-page">
			<PageTitle name={say('places.sort')} purpose={purposeOf('sort')}>
				<Choices
					label={say('sort.howToLook')}
					value={view}
					options={VIEWS.map(([key, name]) => [key, say(name)] as const)}
					onChange={setView}
				/>
			</PageTitle>
			<LastYearNotes report={report} />
			{items.length === 0 ? (
				<Empty title={say('sort.nothingYet')}>
					<p>{say('sort.addFirst')}</p>
					<p>
						<Link href={addressOf(seasonId, 'garments')}>{say('sort.toGarments')}</Link>
					</p>
				</Empty>
			) : (
				<div className="stack">
					<SortProgress decided={items.length - left.length} count={items.length} />
					<Problem of={sorting.problem} />
					{view === 'rail' ? (
						<RailView items={items} />
					) : left.length === 0 ? (
						<AllSorted sorting={sorting} />
					) : (
						views[view]()
					)}
				</div>
			)}
			<Leaving items={items} />
			<SurerPhotos report={report} />
			<NextStepLink report={report} place="sort" />
		</div>
	);
}
