import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { PicturesReport } from '../../../../src/wardrobe/pictures/pictures-report.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { Inspiration } from '../../../../src/wardrobe/words/season.ts';
import { useGarments, useInspirations } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { PhotoTile } from '../../parts/photo-tile.tsx';
import { FlatLay } from '../line-up/flat-lay.tsx';
import '../line-up/line-up.css';
import { PieceKind } from './piece-kind.tsx';
import './wear-pictures.css';

/** Pictures shown before the rest is asked for. */
const SHOWN = 6;

type Picture = PicturesReport['pictures'][number];

/** One picture beside the outfit that the wardrobe makes of it, with what answers each piece. */
function PictureRow({
	picture,
	inspiration,
	garments,
}: {
	picture: Picture;
	inspiration: Inspiration | undefined;
	garments: ReadonlyMap<string, Garment>;
}) {
	const worn = picture.answers.flatMap(({ garmentId, answer }) => {
		const garment = garmentId === null ? undefined : garments.get(garmentId);
		return garment && answer.degree !== 'missing' ? [garment] : [];
	});
	return (
		<li className="wear-picture">
			<PhotoTile photoId={inspiration?.photoId} shape="tall" alt={picture.title} />
			{worn.length > 0 ? (
				<figure aria-label={say('wearPage.outfit')}>
					<FlatLay pieces={worn} />
				</figure>
			) : null}
			<div className="wear-words">
				<p>
					<strong>{picture.sentence}</strong>
				</p>
				<ul aria-label={say('wearPage.pieces')}>
					{picture.answers.map(({ name, sentence, piece }) => (
						<li key={piece.place} className="wear-piece">
							<p>
								<strong>{name}</strong>
								{piece.told ? ` (${say('wearPage.told')})` : piece.kind ? '' : ` (${say('wearPage.guessed')})`}:{' '}
								{sentence}
							</p>
							{inspiration ? <PieceKind piece={piece} name={name} inspiration={inspiration} /> : null}
						</li>
					))}
				</ul>
			</div>
		</li>
	);
}

/** The board, picture by picture: what can be worn now, what is a piece away. Nothing without pictures of clothes. */
export function WearPictures({ report }: { report: Report }) {
	const [all, setAll] = useState(false);
	const { data: garments = [] } = useGarments();
	const { data: inspirations = [] } = useInspirations(report.season.id);
	const { pictures, sentence } = report.pictures;
	if (pictures.length === 0) return null;
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	const inspirationOf = new Map(inspirations.map((one) => [one.id, one]));
	const rest = pictures.length - SHOWN;
	return (
		<section aria-labelledby="wear-pictures">
			<h2 id="wear-pictures">{say('wearPage.title')}</h2>
			<p>{sentence}</p>
			<ol className="wear-pictures">
				{pictures.slice(0, all ? undefined : SHOWN).map((picture) => (
					<PictureRow
						key={picture.inspirationId}
						picture={picture}
						inspiration={inspirationOf.get(picture.inspirationId)}
						garments={byId}
					/>
				))}
			</ol>
			{rest > 0 && !all ? <Button onPress={() => setAll(true)}>{say('wearPage.more', { count: rest })}</Button> : null}
		</section>
	);
}
