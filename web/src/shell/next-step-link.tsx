import { Link } from 'wouter';
import { say } from '../../../src/language/speak.ts';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import { addressOf, type PlaceInSeason, placeName } from './addresses.ts';
import { nextStepOf } from './next-step.ts';

/** The end of a page: what comes next in the season, and why. */
export function NextStepLink({
	report,
	place,
	kindsOpen,
}: {
	report: Report;
	place: PlaceInSeason;
	/** Garments whose kind nobody has confirmed, where the page knows. */
	kindsOpen?: number;
}) {
	const { to, why } = nextStepOf(place, report, kindsOpen);
	return (
		<aside className="next-step" aria-label={say('next.label')}>
			<p className="next-step-why">{why}</p>
			<Link href={addressOf(report.season.id, to)} className="button button-main next-step-link">
				{say('next.goTo', { place: placeName(to) })}
			</Link>
		</aside>
	);
}
