import { say } from '../../../src/language/speak.ts';
import type { GarmentReport } from '../../../src/wardrobe/season/garment-report.ts';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { sureText } from './colour-text.ts';
import { Partners } from './partners.tsx';
import { Swatch } from './swatch.tsx';
import { trueWords } from './true-words.ts';
import { VerdictMark } from './verdict-mark.tsx';

/** All that the season says of one garment, with the reasons. */
export function GarmentJudgement({
	said,
	garment,
	report,
	onOpen,
}: {
	said: GarmentReport;
	garment: Garment;
	report: Report;
	/** Leads to another garment; absent where that would lead away. */
	onOpen?: (id: string) => void;
}) {
	return (
		<div className="stack judgement">
			{garment.swatches.length > 0 ? (
				<>
					<p>
						<VerdictMark {...said.fit} />
					</p>
					<p>{said.fit.sentence}</p>
					<ul className="stack">
						{said.fit.swatches.map(({ swatch, sentence }) => (
							<li key={sentence}>
								<Swatch lab={swatch.lab} note={sentence} size="small" />
							</li>
						))}
					</ul>
				</>
			) : (
				<p className="quiet">{say('garments.toRead')}</p>
			)}
			{said.loner ? <p>{said.loner.sentence}</p> : null}
			{said.twins.map((twin) => (
				<p key={`${twin.garmentA} ${twin.garmentB}`}>{twin.sentence}</p>
			))}
			<details>
				<summary>{say('garments.beside')}</summary>
				<ul className="reasons">
					{said.style.map(({ axis, sentence }) => (
						<li key={axis}>{sentence}</li>
					))}
				</ul>
			</details>
			<Partners said={said} seasonId={report.season.id} onOpen={onOpen} />
			<p className="small quiet">
				{said.wear.sentence}{' '}
				{garment.swatches.length > 0 ? (
					<>
						{trueWords(garment.trust.error)}{' '}
						{say('photo.patternSure', {
							pattern: say(`patterns.${garment.pattern.type}`),
							percent: sureText(garment.pattern.sure),
						})}
					</>
				) : null}
			</p>
		</div>
	);
}
