import { say } from '../../../../src/language/speak.ts';
import type { PaletteChange } from '../../../../src/wardrobe/palette/palette-change.ts';
import { Swatch } from '../../parts/swatch.tsx';

/** What the palette has of last year's same season, what is new and what is gone. */
export function PaletteChangeNote({ change }: { change: PaletteChange | null }) {
	if (!change) return null;
	const list = (title: string, colours: PaletteChange['arrived']) =>
		colours.length === 0 ? null : (
			<div>
				<h4>{title}</h4>
				<ul className="row">
					{colours.map((colour) => (
						<li key={colour.id}>
							<Swatch lab={colour.lab} label={colour.label} size="small" />
						</li>
					))}
				</ul>
			</div>
		);
	return (
		<div className="stack note-from-last-year">
			<h3>{say('palette.againstLastYear')}</h3>
			<p>{change.sentence}</p>
			{list(say('palette.arrived'), change.arrived)}
			{list(say('palette.gone'), change.gone)}
		</div>
	);
}
