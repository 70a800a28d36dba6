import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { Choices } from '../../parts/choices.tsx';
import { Empty } from '../../parts/empty.tsx';
import { LastYearNotes } from '../../parts/last-year-notes.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { Leaving } from './leaving.tsx';
import { OneByOne } from './one-by-one.tsx';
import { RailView } from './rail-view.tsx';
import { sortOrder } from './sort-order.ts';
import './sort.css';

/** Every garment gets its place: on the rail, stored, or leaving. The program suggests, the user decides. */
export default function SortPage({ report }: PageProps) {
	const { data: garments = [] } = useGarments();
	const [view, setView] = useState<'one' | 'rail'>('one');
	const items = useMemo(() => {
		const said = new Map(report.garments.map((one) => [one.garmentId, one]));
		return sortOrder(
			garments.flatMap((garment) => {
				const own = said.get(garment.id);
				return own ? [{ garment, said: own }] : [];
			}),
		);
	}, [garments, report]);
	return (
		<div className="page-body">
			<PageTitle name={say('places.sort')} purpose={purposeOf('sort')}>
				<Choices
					label="How to look at it"
					value={view}
					options={[
						['one', 'One by one'],
						['rail', 'The rail'],
					]}
					onChange={setView}
				/>
			</PageTitle>
			<LastYearNotes report={report} />
			{report.surerLight.sentence ? <p className="small quiet">{report.surerLight.sentence}</p> : null}
			{items.length === 0 ? (
				<Empty title="Nothing to sort yet">
					<p>
						Add <Link href={addressOf(report.season.id, 'garments')}>your garments</Link> first: all of them, stored
						pieces included.
					</p>
				</Empty>
			) : view === 'one' ? (
				<OneByOne key={report.season.id} items={items} report={report} />
			) : (
				<RailView items={items} />
			)}
			<Leaving items={items} />
			<NextStepLink report={report} place="sort" />
		</div>
	);
}
