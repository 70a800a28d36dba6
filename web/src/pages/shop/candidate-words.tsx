import { say } from '../../../../src/language/speak.ts';
import type { CandidateCheck } from '../../../../src/wardrobe/wishes/candidate.ts';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';

/** What is said of a piece found for sale: the advice, the verdict, its colours, the reasons, and what goes with it. */
export function CandidateWords({ check, name }: { check: CandidateCheck; name: string }) {
	const { fit, reasons, partners, partnerCount, sentence } = check;
	return (
		<>
			<p className="recommendation">{sentence}</p>
			<p>
				<VerdictMark {...fit} />
			</p>
			<SwatchStrip swatches={fit.swatches.map(({ swatch }) => swatch)} label={say('shopPage.coloursOf', { name })} />
			<ul className="reasons">
				{reasons.map((reason) => (
					<li key={reason}>{reason}</li>
				))}
			</ul>
			{partners.length > 0 ? (
				<details>
					<summary>{say('garments.goesWith', { count: partnerCount })}</summary>
					<ul className="reasons">
						{partners.map((partner) => (
							<li key={partner.garmentId}>
								{say('shopPage.partnerSays', { name: partner.name, sentence: partner.support.sentence })}
							</li>
						))}
					</ul>
				</details>
			) : null}
		</>
	);
}
