import type { Bands } from '../../../src/wardrobe/gaps/bands.ts';
import { colourWord, type Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { percentText } from '../parts/colour-text.ts';
import { Chip } from '../parts/swatch.tsx';

/** The woven bands' numbers in words and figures. */
export function BandsTable({
	bands,
	palette,
	nameOf,
}: {
	bands: Bands;
	palette: Palette;
	nameOf: (id: string) => string;
}) {
	const heldName = new Map(bands.held.map(({ id, name }) => [id, name]));
	const askedRows = bands.asked.flatMap((asked) => {
		const colour = palette.colours.find(({ id }) => id === asked.paletteColourId);
		return colour ? [{ asked, colour }] : [];
	});
	return (
		<div className="stack">
			<div className="table-scroll">
				<table>
					<caption>Asked for by the palette</caption>
					<thead>
						<tr>
							<th scope="col">Colour</th>
							<th scope="col" className="figure">
								Asked
							</th>
							<th scope="col" className="figure">
								Covered
							</th>
							<th scope="col" className="figure">
								Missing
							</th>
							<th scope="col">Covered by</th>
						</tr>
					</thead>
					<tbody>
						{askedRows.map(({ asked, colour }) => (
							<tr key={colour.id} data-asked={colour.id}>
								<th scope="row">
									<span className="swatch">
										<Chip lab={colour.lab} size="small" />
										{colourWord(colour)}
									</span>
								</th>
								<td className="figure">{percentText(asked.amount)}</td>
								<td className="figure">{percentText(asked.covered)}</td>
								<td className="figure">{percentText(asked.missing)}</td>
								<td>
									{bands.threads
										.filter(({ paletteColourId }) => paletteColourId === colour.id)
										.map(({ heldId, amount }) => `${heldName.get(heldId)} ${percentText(amount)}`)
										.join(', ') || 'nothing'}
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
			<div className="table-scroll">
				<table>
					<caption>Held by your garments</caption>
					<thead>
						<tr>
							<th scope="col">Colour</th>
							<th scope="col" className="figure">
								Held
							</th>
							<th scope="col" className="figure">
								Surplus
							</th>
							<th scope="col">In</th>
						</tr>
					</thead>
					<tbody>
						{bands.held.map((held) => (
							<tr key={held.id} data-held={held.id}>
								<th scope="row">
									<span className="swatch">
										<Chip lab={held.lab} size="small" />
										{held.name}
									</span>
								</th>
								<td className="figure">{percentText(held.amount)}</td>
								<td className="figure">{percentText(held.surplus)}</td>
								<td>{held.garmentIds.map(nameOf).join(', ')}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</div>
	);
}
