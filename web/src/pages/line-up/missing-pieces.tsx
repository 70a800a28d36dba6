import { say } from '../../../../src/language/speak.ts';
import { outfitsText } from '../../../../src/wardrobe/pairs/outfit-range.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { colourWord } from '../../../../src/wardrobe/words/palette-colour.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { percentText } from '../../parts/colour-text.ts';
import { Chip } from '../../parts/swatch.tsx';
import { TableScroll } from '../../parts/table-scroll.tsx';

/** Share of the most possible that is said to be all of it: what rounds to 100 %. */
const ALL_OF_IT = 0.995;

/** For every slot the palette colour in which one more piece would add most outfits. */
export function MissingPieces({ report }: { report: Report }) {
	const best = SLOTS.flatMap((slot) => {
		const first = report.missingPieces.find((piece) => piece.slot === slot && piece.outfitsAdded.to > 0);
		const colour = report.palette.colours.find(({ id }) => id === first?.paletteColourId);
		return first && colour ? [{ piece: first, colour }] : [];
	});
	if (best.length === 0) return null;
	return (
		<section className="section" aria-labelledby="missing">
			<h2 id="missing">{say('onePiece.title')}</h2>
			<TableScroll label={say('onePiece.title')}>
				<table>
					<caption>{say('onePiece.caption')}</caption>
					<thead>
						<tr>
							<th scope="col">{say('onePiece.sort')}</th>
							<th scope="col">{say('onePiece.in')}</th>
							<th scope="col" className="figure">
								{say('onePiece.added')}
							</th>
						</tr>
					</thead>
					<tbody>
						{best.map(({ piece, colour }) => (
							<tr key={piece.slot}>
								<th scope="row">{say(`slots.${piece.slot}`)}</th>
								<td>
									<span className="swatch">
										<Chip lab={colour.lab} size="small" />
										{colourWord(colour)}
									</span>
								</td>
								<td className="figure">
									{outfitsText(piece.outfitsAdded)}
									<span className="small quiet one-piece-share">
										{piece.shareOfBest >= ALL_OF_IT
											? say('onePiece.all')
											: say('onePiece.most', { percent: percentText(piece.shareOfBest) })}
									</span>
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</TableScroll>
		</section>
	);
}
