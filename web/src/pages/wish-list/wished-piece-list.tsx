import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { PicturesReport } from '../../../../src/wardrobe/pictures/pictures-report.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { isWished } from '../../../../src/wardrobe/wishes/is-wished.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { useChange } from '../../api/change.ts';
import { request } from '../../api/request.ts';
import { useInspirations } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Swatch } from '../../parts/swatch.tsx';
import { PiecePicture } from '../../photo/piece-picture.tsx';
import { WishButton } from './wish-button.tsx';

/** Pieces shown before the rest is asked for. */
const SHOWN = 5;
/** What still answers such a wish: at least what an uncalibrated photo cannot tell apart, at most a palette colour's width (CIEDE2000). */
const LEAST_TOLERANCE = 8;
const MOST_TOLERANCE = 20;

type Wished = PicturesReport['wishedPieces'][number];

function PieceRow({
	piece,
	report,
	wished,
	photoId,
}: {
	piece: Wished;
	report: Report;
	wished: boolean;
	/** The picture that shows it. */
	photoId: string | undefined;
}) {
	const titles = new Map(report.pictures.pictures.map(({ inspirationId, title }) => [inspirationId, title]));
	const shown = piece.pictures.map((id) => titles.get(id)).filter(Boolean);
	const wish = useChange(() =>
		request<Wish>('POST', '/api/wishes', {
			seasonId: report.season.id,
			name: piece.name,
			slot: piece.slot,
			kind: piece.kind,
			target: piece.lab,
			tolerance: Math.min(MOST_TOLERANCE, Math.max(LEAST_TOLERANCE, Math.round(piece.spread))),
			yearParts: [report.season.yearPart],
			priceLimit: null,
			expectedWearsPerYear: null,
			wantedSince: report.madeOn,
			state: 'open',
			paletteColourId: null,
			seenIn: piece.exampleIn,
			notes: say('wishPage.from', { pictures: shown.join('; ') }),
		}),
	);
	return (
		<li className="gap">
			<span className="seen-piece">
				<PiecePicture photoId={photoId} slot={piece.example.slot} alt={say('wishPage.pieceOf', { name: piece.name })} />
				<Swatch lab={piece.lab} label={piece.name} />
			</span>
			<p>{piece.sentence}</p>
			<WishButton wished={wished} wish={wish} label={say('wishPage.wishFor', { name: piece.name })} />
			<Problem of={wish.problem} />
		</li>
	);
}

/** What the board's pictures wear and nothing owned answers; the piece that makes most pictures wearable first. */
export function WishedPieceList({ report, wishes }: { report: Report; wishes: readonly Wish[] }) {
	const [all, setAll] = useState(false);
	const { data: inspirations = [] } = useInspirations(report.season.id);
	const photoOf = new Map(inspirations.map(({ id, photoId }) => [id, photoId]));
	const { wishedPieces, pictures } = report.pictures;
	if (pictures.length === 0) return null;
	const wished = ({ name, slot }: Wished) => isWished({ kind: 'piece', name, slot, paletteColourId: null }, wishes);
	const rest = wishedPieces.length - SHOWN;
	return (
		<>
			<h2 id="wished-pieces">{say('wishPage.title')}</h2>
			{wishedPieces.length === 0 ? <p>{say('wishPage.none')}</p> : null}
			<ol className="gap-list" aria-labelledby="wished-pieces">
				{wishedPieces.slice(0, all ? undefined : SHOWN).map((piece) => (
					<PieceRow
						key={piece.id}
						piece={piece}
						report={report}
						wished={wished(piece)}
						photoId={photoOf.get(piece.exampleIn)}
					/>
				))}
			</ol>
			{rest > 0 && !all ? <Button onPress={() => setAll(true)}>{say('wishPage.more', { count: rest })}</Button> : null}
		</>
	);
}
