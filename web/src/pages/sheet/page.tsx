import { dayText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import { useGarments, useLineUp, useWishes } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { AlsoMissing } from './also-missing.tsx';
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
	if (!garments.data || !lineUp.data || !wishes.data) return <Loading what={say('sheet.loading')} />;
	const chosen = new Set(lineUp.data.garmentIds);
	const pieces = garments.data.filter(({ id, place }) => (held.isLineUp ? chosen.has(id) : place === 'rail'));
	const open = wishes.data.filter(({ state }) => state === 'open');
	const dates = { start: dayText(season.startsOn), end: dayText(season.endsOn), day: dayText(madeOn) };
	return (
		<div className="page-body paper">
			<PageTitle name={season.name} purpose={say('sheet.dates', dates)}>
				<Button look="main" onPress={() => window.print()}>
					{say('sheet.print')}
				</Button>
			</PageTitle>
			<div className="paper-top">
				<section aria-labelledby="sheet-palette">
					<h2 id="sheet-palette">{say('sheet.palette')}</h2>
					<PaletteRows palette={palette} bands={report.bands} />
				</section>
				<PicturesFirst report={report} />
			</div>
			<section aria-labelledby="sheet-wishes">
				<h2 id="sheet-wishes">{say('sheet.lookFor')}</h2>
				<LookingFor wishes={open} palette={palette} />
				<AlsoMissing gaps={report.gaps} wishes={open} palette={palette} />
			</section>
			<section aria-labelledby="sheet-pieces">
				<h2 id="sheet-pieces">{say(held.isLineUp ? 'sheet.lineUp' : 'sheet.onTheRail')}</h2>
				<PieceRows pieces={pieces} report={report} />
			</section>
			<p className="paper-caution">{caution}</p>
			<NextStepLink report={report} place="sheet" />
		</div>
	);
}
