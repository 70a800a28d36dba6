import type { Bands } from '../../../../src/wardrobe/gaps/bands.ts';
import type { Palette } from '../../../../src/wardrobe/words/palette-colour.ts';
import { colourNumbers, percentText } from '../../parts/colour-text.ts';
import { Chip } from '../../parts/swatch.tsx';

/** The palette in numbered rows. A bar shows what is asked, its dark part what is covered; both stand beside it in figures. */
export function PaletteRows({ palette, bands }: { palette: Palette; bands: Bands }) {
	if (palette.colours.length === 0) return <p>No palette yet. It comes from the pictures of the direction.</p>;
	const askedOf = new Map(bands.asked.map((asked) => [asked.paletteColourId, asked]));
	const largest = Math.max(...bands.asked.map(({ amount }) => amount));
	return (
		<table className="paper-table">
			<thead>
				<tr>
					<th scope="col">No.</th>
					<th scope="col">Colour</th>
					<th scope="col">Role</th>
					<th scope="col">Asked</th>
					<th scope="col">Covered</th>
					<th scope="col" className="paper-bar-column">
						<span className="hidden-visually">As a bar</span>
					</th>
				</tr>
			</thead>
			<tbody>
				{palette.colours.map(({ id, lab, label, name, role }, index) => {
					const { amount = 0, covered = 0 } = askedOf.get(id) ?? {};
					return (
						<tr key={id}>
							<td className="figure">{index + 1}</td>
							<th scope="row">
								<span className="swatch">
									<Chip lab={lab} size="small" />
									<span className="swatch-words">
										<span>{label ? `${label} (${name})` : name}</span>
										<span className="small quiet number">{colourNumbers(lab)}</span>
									</span>
								</span>
							</th>
							<td>{role}</td>
							<td className="figure">{percentText(amount)}</td>
							<td className="figure">{percentText(covered)}</td>
							<td aria-hidden="true">
								<span className="paper-bar" style={{ width: `${largest > 0 ? (amount / largest) * 100 : 0}%` }}>
									<span style={{ width: `${amount > 0 ? (covered / amount) * 100 : 0}%` }} />
								</span>
							</td>
						</tr>
					);
				})}
			</tbody>
		</table>
	);
}
