import { useMemo, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { outfitList } from '../../../../src/wardrobe/pairs/outfit-list.ts';
import { pairTable } from '../../../../src/wardrobe/pairs/pair-table.ts';
import { wornTogether } from '../../../../src/wardrobe/pairs/worn-together.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { usePairWords, useWears } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { SelectField } from '../../parts/field.tsx';
import { FlatLay } from './flat-lay.tsx';
import { OutfitDialog } from './outfit-dialog.tsx';

const A_PAGE = 12;

/** How the garments go together, once what was worn and said of pairs is there; null before. */
function usePairTable(report: Report, garments: readonly Garment[]) {
	const { data: pairWords } = usePairWords();
	const { data: wears } = useWears('1900-01-01', report.madeOn);
	const table = useMemo(() => {
		if (!pairWords || !wears) return null;
		const { palette, pairings } = report;
		return pairTable(garments, { palette, pairings, pairWords, wornTogether: wornTogether(wears) });
	}, [garments, report, pairWords, wears]);
	return { table, pairWords: pairWords ?? [] };
}

/** Outfits of the set laid flat, a dozen at a time; each opens to its pairings, to be approved or refused. */
export function Outfits({ report, garments }: { report: Report; garments: readonly Garment[] }) {
	const { table, pairWords } = usePairTable(report, garments);
	const [anchorId, setAnchorId] = useState('');
	const [limit, setLimit] = useState(A_PAGE);
	const [opened, setOpened] = useState<readonly number[] | null>(null);
	const outfits = useMemo(() => {
		if (!table) return [];
		const anchor = garments.findIndex(({ id }) => id === anchorId);
		return outfitList(table, [...garments.keys()], {
			anchor: anchor < 0 ? null : anchor,
			limit,
			season: report.season,
		});
	}, [table, garments, report.season, anchorId, limit]);
	if (!table) return null;
	return (
		<section className="section" aria-labelledby="outfits">
			<h2 id="outfits">{say('outfits.title')}</h2>
			<div className="row outfit-tools">
				<SelectField
					label={say('outfits.wearing')}
					value={anchorId}
					options={[
						{ value: '', label: say('outfits.anything') },
						...garments.map(({ id, name }) => ({ value: id, label: name })),
					]}
					onChange={(id) => {
						setAnchorId(id);
						setLimit(A_PAGE);
					}}
				/>
			</div>
			{outfits.length === 0 ? (
				<Empty title={say('outfits.none')}>
					<p>{say('outfits.noneHow')}</p>
				</Empty>
			) : (
				<ul className="outfits">
					{outfits.map((pieces) => (
						<li key={pieces.join(' ')}>
							<button type="button" className="tile-button" onClick={() => setOpened(pieces)}>
								<FlatLay pieces={pieces.map((piece) => garments[piece]!)} />
								<span className="small">{pieces.map((piece) => garments[piece]!.name).join(' + ')}</span>
							</button>
						</li>
					))}
				</ul>
			)}
			{outfits.length === limit ? (
				<Button onPress={() => setLimit(limit + A_PAGE)}>{say('outfits.more')}</Button>
			) : null}
			{opened?.every((piece) => piece < garments.length) ? (
				<OutfitDialog table={table} pieces={opened} pairWords={pairWords} onClose={() => setOpened(null)} />
			) : null}
		</section>
	);
}
