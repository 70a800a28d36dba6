import { dayText } from '../../../../src/language/numbers.ts';
import { useGarments, useLineUp, useWishes } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { LookingFor } from './looking-for.tsx';
import { PaletteRows } from './palette-rows.tsx';
import { PicturesFirst } from './pictures-first.tsx';
import { PieceRows } from './piece-rows.tsx';
import './sheet.css';

/** The season on paper: palette, pieces and wishes, each colour numbered and in words, so that it reads in black and white. */
export default function SeasonSheet({ report }: PageProps) {
	const { season, palette, held, madeOn, caution } = report;
	const garments = useGarments();
	const lineUp = useLineUp(season.id);
	const wishes = useWishes(season.id);
	const error = garments.error ?? lineUp.error ?? wishes.error;
	if (error) return <Problem of={error} />;
	if (!garments.data || !lineUp.data || !wishes.data) return <Loading what="the season sheet" />;
	const chosen = new Set(lineUp.data.garmentIds);
	const pieces = garments.data.filter(({ id, place }) => (held.isLineUp ? chosen.has(id) : place === 'rail'));
	return (
		<div className="page-body paper">
			<PageTitle
				name={season.name}
				purpose={`${dayText(season.startsOn)} to ${dayText(season.endsOn)}. Sheet of ${dayText(madeOn)}. ${held.sentence}`}
			>
				<Button look="main" onPress={() => window.print()}>
					Print it
				</Button>
			</PageTitle>
			<section aria-labelledby="sheet-palette">
				<h2 id="sheet-palette">Palette</h2>
				<PaletteRows palette={palette} bands={report.bands} />
			</section>
			<PicturesFirst report={report} />
			<section aria-labelledby="sheet-wishes">
				<h2 id="sheet-wishes">To look for</h2>
				<LookingFor wishes={wishes.data.filter(({ state }) => state === 'open')} gaps={report.gaps} palette={palette} />
			</section>
			<section aria-labelledby="sheet-pieces">
				<h2 id="sheet-pieces">{held.isLineUp ? 'Line-up' : 'On the rail'}</h2>
				<PieceRows pieces={pieces} report={report} />
			</section>
			<p className="paper-caution">{caution}</p>
			<NextStepLink report={report} place="sheet" />
		</div>
	);
}
