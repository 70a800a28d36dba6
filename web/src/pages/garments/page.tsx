import { useCallback, useMemo, useState } from 'react';
import { useGarments } from '../../api/wardrobe.ts';
import { countText } from '../../parts/colour-text.ts';
import { Empty } from '../../parts/empty.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import type { PageProps } from '../../shell/season-page.tsx';
import { DropZone } from '../../uploads/drop-zone.tsx';
import { addUploads } from '../../uploads/upload-queue.ts';
import { BulkEdit } from './bulk-edit.tsx';
import { Filters } from './filters.tsx';
import { GarmentDialog } from './garment-dialog.tsx';
import { filteredGarments, NO_FILTER } from './garment-filter.ts';
import { GarmentList } from './garment-list.tsx';
import { ImportTable } from './import-table.tsx';
import './garments.css';

/** Everything owned: fast entry, finding, changing one or many. */
export default function GarmentsPage({ report }: PageProps) {
	const { data: garments = [] } = useGarments();
	const [filter, setFilter] = useState(NO_FILTER);
	const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
	const [openId, setOpenId] = useState<string | null>(null);
	const rows = useMemo(() => {
		const said = new Map(report.garments.map((one) => [one.garmentId, one]));
		return garments.map((garment) => ({ garment, said: said.get(garment.id) ?? null }));
	}, [garments, report]);
	const shown = useMemo(() => filteredGarments(rows, filter), [rows, filter]);
	const onPhotos = useCallback(
		(files: readonly File[]) => addUploads(files, 'garment', report.season.id),
		[report.season.id],
	);
	const toggle = useCallback(
		(id: string, on: boolean) =>
			setChosen((old) => {
				const next = new Set(old);
				if (on) next.add(id);
				else next.delete(id);
				return next;
			}),
		[],
	);
	const opened = rows.find(({ garment }) => garment.id === openId);
	const unnamed = garments.filter(({ kindFrom, place }) => kindFrom !== 'user' && place !== 'gone').length;
	return (
		<div className="page-body">
			<PageTitle
				name="Garments"
				purpose="Everything you own, stored pieces included. Drop all your photos at once: one garment a photo, laid flat or on a hanger, by a window."
			/>
			<DropZone label="garments" onPhotos={onPhotos}>
				{unnamed > 0 ? (
					<span className="small row-end">{countText(unnamed, 'kind')} only suggested: see “kind to confirm”.</span>
				) : null}
			</DropZone>
			{garments.length === 0 ? (
				<Empty title="No garment yet">
					<p>
						Photograph forty pieces one after the other and drop them here together. Each gets a suggested kind, which
						you confirm or correct in the list.
					</p>
				</Empty>
			) : (
				<section aria-label="The garments">
					<Filters filter={filter} onChange={setFilter} />
					<BulkEdit
						chosen={shown.filter(({ garment }) => chosen.has(garment.id)).map(({ garment }) => garment)}
						shownCount={shown.length}
						onAll={() => setChosen(new Set(shown.map(({ garment }) => garment.id)))}
						onNone={() => setChosen(new Set())}
					/>
					<GarmentList rows={shown} chosen={chosen} onToggle={toggle} onOpen={setOpenId} />
				</section>
			)}
			<ImportTable />
			{opened ? (
				<GarmentDialog
					row={opened}
					garments={garments}
					report={report}
					onClose={() => setOpenId(null)}
					onOpen={setOpenId}
				/>
			) : null}
		</div>
	);
}
