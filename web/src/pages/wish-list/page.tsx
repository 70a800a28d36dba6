import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { useWishes } from '../../api/wardrobe.ts';
import { WovenBands } from '../../charts/woven-bands.tsx';
import { Empty } from '../../parts/empty.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { GapList } from './gap-list.tsx';
import { Makers } from './makers.tsx';
import { NewWish } from './new-wish.tsx';
import { WishCard } from './wish-card.tsx';
import { WishedPieceList } from './wished-piece-list.tsx';
import './wish-list.css';

const nameIn = (report: Report) => {
	const names = new Map(report.garments.map(({ garmentId, name }) => [garmentId, name]));
	return (id: string) => names.get(id) ?? say('set.gone');
};

/** Gaps become wishes here; wishes wait, used first. */
export default function WishListPage({ report }: PageProps) {
	const { season } = report;
	const { data, error } = useWishes(season.id);
	const wishes = data ?? [];
	const standing = new Map(report.wishes.map((one) => [one.wishId, one]));
	const place = new Map(report.wishes.map(({ wishId }, index) => [wishId, index]));
	const placeOf = (id: string) => place.get(id) ?? report.wishes.length;
	const open = wishes.filter(({ state }) => state === 'open').sort((a, b) => placeOf(a.id) - placeOf(b.id));
	const past = wishes.filter(({ state }) => state !== 'open');
	return (
		<div className="page-body">
			<PageTitle name={say('places.wish-list')} purpose={purposeOf('wish-list')} />
			<WovenBands bands={report.bands} palette={report.palette} nameOf={nameIn(report)} />
			<div className="wish-columns">
				<section aria-labelledby="wishes">
					<h2 id="wishes">{say('wishList.wishes')}</h2>
					<Problem of={error} />
					{open.length === 0 && data ? (
						<Empty title={say('wishList.noWish')}>
							<p>{say('wishList.noWishHow')}</p>
						</Empty>
					) : (
						<ol className="wish-list">
							{open.map((wish) => (
								<li key={wish.id}>
									<WishCard wish={wish} standing={standing.get(wish.id)} season={season} />
								</li>
							))}
						</ol>
					)}
					<NewWish season={season} palette={report.palette} today={report.madeOn} />
					{past.length > 0 ? (
						<details>
							<summary>{say('wishList.past', { count: past.length })}</summary>
							<ol className="wish-list">
								{past.map((wish) => (
									<li key={wish.id}>
										<WishCard wish={wish} standing={undefined} season={season} />
									</li>
								))}
							</ol>
						</details>
					) : null}
				</section>
				<section aria-labelledby="gaps">
					<WishedPieceList report={report} wishes={open} />
					<h2 id="gaps">{say('wishList.gaps')}</h2>
					<GapList report={report} wishes={open} />
				</section>
			</div>
			<Makers waitingDays={season.waitingDays} />
			<NextStepLink report={report} place="wish-list" />
		</div>
	);
}
