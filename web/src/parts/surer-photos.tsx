import type { Report } from '../../../src/wardrobe/season/report.ts';

/** What surer photos would tell: pieces whose verdict is open, and pieces that are too close to tell apart. Nothing where that is none. */
export const SurerPhotos = ({ report: { surerLight, tooClose } }: { report: Report }) =>
	[surerLight.sentence, ...tooClose.map(({ sentence }) => sentence)]
		.filter((sentence) => sentence !== null)
		.map((sentence) => (
			<p key={sentence} className="small quiet">
				{sentence}
			</p>
		));
