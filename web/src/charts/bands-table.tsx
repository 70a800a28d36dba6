import type { ReactNode } from 'react';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { say } from '../../../src/language/speak.ts';
import type { Bands } from '../../../src/wardrobe/gaps/bands.ts';
import { colourWord, type Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { percentText } from '../parts/colour-text.ts';
import { Chip } from '../parts/swatch.tsx';
import { TableScroll } from '../parts/table-scroll.tsx';

/** A table of colours: a heading a column, the figures between the first and the last. */
function ColourTable({
	caption,
	figures,
	last,
	children,
}: {
	caption: string;
	figures: readonly string[];
	last: string;
	children: ReactNode;
}) {
	return (
		<TableScroll label={caption}>
			<table>
				<caption>{caption}</caption>
				<thead>
					<tr>
						<th scope="col">{say('bands.colour')}</th>
						{figures.map((figure) => (
							<th key={figure} scope="col" className="figure">
								{figure}
							</th>
						))}
						<th scope="col">{last}</th>
					</tr>
				</thead>
				<tbody>{children}</tbody>
			</table>
		</TableScroll>
	);
}

/** A row's colour, its shares in the order of the headings, and what stands in the last column. */
function Cells({ lab, name, shares, last }: { lab: Lab65; name: string; shares: readonly number[]; last: string }) {
	return (
		<>
			<th scope="row">
				<span className="swatch">
					<Chip lab={lab} size="small" />
					{name}
				</span>
			</th>
			{shares.map((share, column) => (
				// biome-ignore lint/suspicious/noArrayIndexKey: a column has no other name here
				<td key={column} className="figure">
					{percentText(share)}
				</td>
			))}
			<td>{last}</td>
		</>
	);
}

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
	const coveredBy = (colourId: string) =>
		bands.threads
			.filter(({ paletteColourId }) => paletteColourId === colourId)
			.map(({ heldId, amount }) => `${heldName.get(heldId)} ${percentText(amount)}`)
			.join(', ') || say('bands.nothing');
	return (
		<div className="stack">
			<ColourTable
				caption={say('bands.askedTitle')}
				figures={[say('bands.askedShare'), say('bands.coveredShare'), say('bands.missingShare')]}
				last={say('bands.coveredBy')}
			>
				{bands.asked.map(({ paletteColourId, amount, covered, missing }) => {
					const colour = palette.colours.find(({ id }) => id === paletteColourId);
					return colour ? (
						<tr key={colour.id} data-asked={colour.id}>
							<Cells
								lab={colour.lab}
								name={colourWord(colour)}
								shares={[amount, covered, missing]}
								last={coveredBy(colour.id)}
							/>
						</tr>
					) : null;
				})}
			</ColourTable>
			<ColourTable
				caption={say('bands.heldTitle')}
				figures={[say('bands.heldShare'), say('bands.surplusShare')]}
				last={say('bands.in')}
			>
				{bands.held.map(({ id, lab, name, amount, surplus, garmentIds }) => (
					<tr key={id} data-held={id}>
						<Cells lab={lab} name={name} shares={[amount, surplus]} last={garmentIds.map(nameOf).join('; ')} />
					</tr>
				))}
			</ColourTable>
		</div>
	);
}
