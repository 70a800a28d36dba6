import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { useInspirations } from '../../api/wardrobe.ts';
import { PhotoTile } from '../../parts/photo-tile.tsx';

const SHOWN = 3;

/** The pictures to wear first: those that what is owned makes up, each with the garments to put on. Nothing where no picture can be worn. */
export function PicturesFirst({ report }: { report: Report }) {
	const { data: inspirations = [] } = useInspirations(report.season.id);
	const nameOf = new Map(report.garments.map(({ garmentId, name }) => [garmentId, name]));
	const first = report.pictures.pictures.filter(({ away }) => away === 0).slice(0, SHOWN);
	if (first.length === 0) return null;
	return (
		<section aria-labelledby="sheet-pictures">
			<h2 id="sheet-pictures">{say('sheet.pictures')}</h2>
			<ul className="paper-pictures">
				{first.map(({ inspirationId, title, answers, sentence }) => {
					const worn = answers.flatMap(({ garmentId, answer }) =>
						answer.degree === 'missing' ? [] : (nameOf.get(garmentId ?? '') ?? []),
					);
					return (
						<li key={inspirationId}>
							<PhotoTile
								photoId={inspirations.find(({ id }) => id === inspirationId)?.photoId}
								shape="tall"
								alt={title}
								eager
							/>
							<span className="paper-words">
								<b>{say('sheet.outfit', { names: [...new Set(worn)].join(' + ') })}</b>
								<span>{sentence}</span>
							</span>
						</li>
					);
				})}
			</ul>
		</section>
	);
}
