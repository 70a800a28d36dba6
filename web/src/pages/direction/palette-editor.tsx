import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { colourWord } from '../../../../src/wardrobe/words/palette-colour.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changePalette, versionQuery } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Problem } from '../../parts/problem.tsx';
import { AddColour } from './add-colour.tsx';
import { PaletteChangeNote } from './palette-change-note.tsx';
import { PaletteRoles } from './palette-roles.tsx';
import { PaletteSize } from './palette-size.tsx';
import { PaletteTools } from './palette-tools.tsx';

/** Deriving the palette anew and changing it, each as it was seen. */
function usePalette({ season, palette }: Report) {
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
	return { edit, derive };
}

/** How much of the board's cloth the palette holds, and which pictures it leaves out. */
function CoverWords({ cover }: { cover: Report['paletteCover'] }) {
	if (!cover) return null;
	const titles = cover.leftOut.map(({ title }) => title).join('; ');
	return (
		<p className="small">
			{cover.sentence} {titles ? say('palette.leftOut', { titles }) : ''}
		</p>
	);
}

/** The season's palette: derived from the board, and changed by hand colour by colour. */
export function PaletteEditor({ report }: { report: Report }) {
	const { season, palette, stations } = report;
	const [chosen, setChosen] = useState<readonly string[]>([]);
	const { edit, derive } = usePalette(report);
	const merging = palette.colours.filter(({ id }) => chosen.includes(id));
	const ids = merging.map(({ id }) => id);
	const isEmpty = palette.colours.length === 0;
	const hasPictures = stations.find(({ station }) => station === 'direction')?.state !== 'empty';
	return (
		<section className="section" aria-labelledby="palette">
			<div className="row">
				<h2 id="palette">{say('palette.title')}</h2>
				<span className="row row-end">
					<Button
						look={isEmpty && hasPictures ? 'main' : 'plain'}
						onPress={() => derive.run('inspirations')}
						isPending={derive.busy}
						isDisabled={!hasPictures}
					>
						{say(isEmpty ? 'palette.derive' : 'palette.again')}
					</Button>
					<Button onPress={() => derive.run('garments')} isPending={derive.busy}>
						{say('palette.fromOwned')}
					</Button>
				</span>
			</div>
			<Problem of={derive.problem ?? edit.problem} />
			{isEmpty ? (
				<Empty title={say('palette.none')}>
					<p>{say(hasPictures ? 'palette.noneHow' : 'palette.needsPictures')}</p>
				</Empty>
			) : (
				<>
					<PaletteRoles
						colours={palette.colours}
						merging={ids}
						onChoose={(id, on) => setChosen(on ? [...ids, id] : ids.filter((one) => one !== id))}
						onEdit={edit.run}
					/>
					<CoverWords cover={report.paletteCover} />
					<PaletteTools
						seasonId={season.id}
						names={merging.map(colourWord)}
						isBusy={edit.busy}
						onMerge={() => {
							edit.run({ edit: 'merge', ids });
							setChosen([]);
						}}
					/>
				</>
			)}
			<AddColour onAdd={edit.run} />
			<PaletteSize season={season} />
			<PaletteChangeNote change={report.paletteChange} />
		</section>
	);
}
