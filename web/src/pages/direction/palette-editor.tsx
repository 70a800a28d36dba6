import { useState } from 'react';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { colourWord, PALETTE_ROLES, type PaletteColour } from '../../../../src/wardrobe/words/palette-colour.ts';
import { addressOfCall, call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changePalette, versionQuery } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Problem } from '../../parts/problem.tsx';
import { AddColour } from './add-colour.tsx';
import { PaletteCard } from './palette-card.tsx';
import { PaletteChangeNote } from './palette-change-note.tsx';
import { PaletteSize } from './palette-size.tsx';

const ROLE_NAMES = {
	base: ['Base', 'neutrals, navy, denim, camel: they carry the set'],
	main: ['Main', 'most of the colour'],
	accent: ['Accent', 'little of it, and vivid'],
	hint: ['Hints', 'seen too little to ask for anything; give one a role to make it count'],
} as const;

/** The season's palette: derived from the board, and changed by hand colour by colour. */
export function PaletteEditor({ report }: { report: Report }) {
	const { season, palette } = report;
	const [chosen, setChosen] = useState<readonly string[]>([]);
	const params = { id: season.id };
	const edit = useChange((one: PaletteEdit) =>
		changePalette(season.id, palette, (version) =>
			call('editPalette', { params, query: versionQuery(version), body: one }),
		),
	);
	const derive = useChange((from: 'inspirations' | 'garments') =>
		changePalette(season.id, palette, (version) =>
			call('derivePalette', { params, query: versionQuery(version), body: { from } }),
		),
	);
	const merging = chosen.filter((id) => palette.colours.some((colour) => colour.id === id));
	const choose = (id: string, on: boolean) => setChosen(on ? [...merging, id] : merging.filter((one) => one !== id));
	const cards = (colours: readonly PaletteColour[]) =>
		colours.map((colour) => (
			<li key={colour.id}>
				<PaletteCard
					colour={colour}
					chosen={merging.includes(colour.id)}
					onChoose={(on) => choose(colour.id, on)}
					onEdit={edit.run}
				/>
			</li>
		));
	return (
		<section className="section" aria-labelledby="palette">
			<div className="row">
				<h2 id="palette">The palette</h2>
				<span className="row row-end">
					<Button
						look={palette.colours.length === 0 ? 'main' : 'plain'}
						onPress={() => derive.run('inspirations')}
						isPending={derive.busy}
					>
						{palette.colours.length === 0 ? 'Derive it from the pictures' : 'Derive it again'}
					</Button>
					<Button onPress={() => derive.run('garments')} isPending={derive.busy}>
						From what I own
					</Button>
				</span>
			</div>
			<Problem of={derive.problem ?? edit.problem} />
			{palette.colours.length === 0 ? (
				<Empty title="No palette yet">
					<p>
						Add pictures to the board below, then derive the palette from them. Locked colours survive when you derive
						it again.
					</p>
				</Empty>
			) : (
				PALETTE_ROLES.map((role) => {
					const colours = palette.colours.filter((colour) => colour.role === role);
					if (colours.length === 0) return null;
					const [name, what] = ROLE_NAMES[role];
					return (
						<div key={role} className="palette-role">
							<h3>
								{name} <span className="small quiet">{what}</span>
							</h3>
							<ul className="palette-cards">{cards(colours)}</ul>
						</div>
					);
				})
			)}
			{palette.colours.length > 0 && report.paletteCover ? (
				<p className="small">
					{report.paletteCover.sentence}
					{report.paletteCover.leftOut.length > 0
						? ` Left out: ${report.paletteCover.leftOut.map(({ title }) => title).join(', ')}.`
						: ''}
				</p>
			) : null}
			<div className="row palette-tools" hidden={palette.colours.length === 0}>
				<Button
					isPending={edit.busy}
					isDisabled={merging.length < 2}
					onPress={() => {
						edit.run({ edit: 'merge', ids: merging });
						setChosen([]);
					}}
				>
					{merging.length < 2
						? 'Merge (tick two or more)'
						: `Merge ${merging.map((id) => colourWord(palette.colours.find((one) => one.id === id)!)).join(' and ')}`}
				</Button>
				<a href={addressOfCall('getPaletteCss', { params })}>CSS</a>
				<a href={addressOfCall('getPaletteTokens', { params })}>Design tokens</a>
				<a href={addressOfCall('getPaletteSvg', { params })}>SVG card</a>
				<a href={addressOfCall('getPalettePng', { params })}>PNG card</a>
			</div>
			<AddColour onAdd={edit.run} />
			<PaletteSize season={season} />
			<PaletteChangeNote change={report.paletteChange} />
		</section>
	);
}
