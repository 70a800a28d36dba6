import type { GarmentReport, Report } from '../../../src/wardrobe/season/report.ts';
import { counted } from '../../../src/wardrobe/words/counted.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { percentText, SEEN_FROM } from './colour-text.ts';
import { Swatch } from './swatch.tsx';
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
	const nameOf = (id: string) =>
		report.garments.find(({ garmentId }) => garmentId === id)?.name ?? 'a garment no longer here';
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
				<p className="quiet">No colours yet: its photo is still to be read.</p>
			)}
			{said.loner ? <p>{said.loner.sentence}</p> : null}
			{said.twins.map((twin) => (
				<p key={`${twin.garmentA} ${twin.garmentB}`}>{twin.sentence}</p>
			))}
			<details>
				<summary>Beside the style of the pictures</summary>
				<ul className="reasons">
					{said.style.map(({ axis, sentence }) => (
						<li key={axis}>{sentence}</li>
					))}
				</ul>
			</details>
			<div>
				<h3>Goes with {counted(said.partnerCount, 'garment')}</h3>
				<ul className="partners">
					{said.partners.map((partner) => (
						<li key={partner.garmentId}>
							{onOpen ? (
								<button type="button" className="link-button" onClick={() => onOpen(partner.garmentId)}>
									{nameOf(partner.garmentId)}
								</button>
							) : (
								nameOf(partner.garmentId)
							)}
							<span className="small quiet"> {partner.support.sentence}</span>
						</li>
					))}
				</ul>
			</div>
			<p className="small quiet">
				{said.wear.sentence} Four times in five its photo is off by {garment.trust.error.toFixed(0)} or less.{' '}
				{SEEN_FROM} Pattern: {garment.pattern.type}, {percentText(garment.pattern.sure)} sure.
			</p>
		</div>
	);
}
