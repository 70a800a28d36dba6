import { useCallback, useMemo, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { Empty } from '../../parts/empty.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SurerPhotos } from '../../parts/surer-photos.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { EarlyPageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { DropZone } from '../../uploads/drop-zone.tsx';
import { addUploads } from '../../uploads/upload-queue.ts';
import { BulkEdit } from './bulk-edit.tsx';
import { ConfirmKinds } from './confirm-kinds.tsx';
import { Filters } from './filters.tsx';
import { GarmentDialog } from './garment-dialog.tsx';
import { filteredGarments, type GarmentFilter, type GarmentRow, NO_FILTER } from './garment-filter.ts';
import { GarmentList } from './garment-list.tsx';
import { Grounds } from './grounds.tsx';
import { ImportTable } from './import-table.tsx';
import { isToConfirm } from './kinds-to-confirm.ts';
import './garments.css';

const NONE: readonly Garment[] = [];

/** The garments, each with what the season says of it (null until that is there), and those that the filter leaves. */
function useRows(garments: readonly Garment[], report: Report | null, filter: GarmentFilter) {
	const rows = useMemo(() => {
		const said = new Map(report?.garments.map((one) => [one.garmentId, one]));
		return garments.map((garment) => ({ garment, said: said.get(garment.id) ?? null }));
	}, [garments, report]);
	const labels = useMemo(
		() => new Map(report?.palette.colours.flatMap(({ id, label }) => (label ? [[id, label] as const] : []))),
		[report],
	);
	return { rows, shown: useMemo(() => filteredGarments(rows, filter, labels), [rows, filter, labels]) };
}

/** Those that are ticked, by their ids. */
function useChosen() {
	const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
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
	return { chosen, toggle, choose: (ids: readonly string[]) => setChosen(new Set(ids)) };
}

/** The list with what finds garments in it, and what is done with several at once. */
function AllGarments({
	shown,
	filter,
	onFilter,
	onOpen,
}: {
	shown: readonly GarmentRow[];
	filter: GarmentFilter;
	onFilter: (filter: GarmentFilter) => void;
	onOpen: (id: string) => void;
}) {
	const { chosen, toggle, choose } = useChosen();
	return (
		<section aria-label={say('garments.all')}>
			<Filters filter={filter} onChange={onFilter} />
			<BulkEdit
				chosen={shown.filter(({ garment }) => chosen.has(garment.id)).map(({ garment }) => garment)}
				shownCount={shown.length}
				onAll={() => choose(shown.map(({ garment }) => garment.id))}
				onNone={() => choose([])}
			/>
			<GarmentList rows={shown} chosen={chosen} onToggle={toggle} onOpen={onOpen} />
		</section>
	);
}

/** Everything owned: fast entry, finding, changing one or many. The list is there at once; what the season says of each piece fills in. */
export default function GarmentsPage({ seasonId, report }: EarlyPageProps) {
	const { data, error } = useGarments();
	const garments = data ?? NONE;
	const [filter, setFilter] = useState(NO_FILTER);
	const [openId, setOpenId] = useState<string | null>(null);
	const { rows, shown } = useRows(garments, report, filter);
	const onPhotos = useCallback((files: readonly File[]) => addUploads(files, 'garment', seasonId), [seasonId]);
	const toConfirm = useMemo(() => garments.filter(isToConfirm), [garments]);
	const opened = rows.find(({ garment }) => garment.id === openId);
	return (
		<div className="page-body">
			<PageTitle name={say('places.garments')} purpose={purposeOf('garments')} />
			<DropZone label={say('garments.label')} onPhotos={onPhotos} />
			<Problem of={error} />
			{toConfirm.length > 0 ? <ConfirmKinds garments={toConfirm} onOpen={setOpenId} /> : null}
			{data === undefined ? (
				error ? null : (
					<Loading what={say('garments.yours')} />
				)
			) : garments.length === 0 ? (
				<Empty title={say('garments.noneYet')}>
					<p>{say('garments.noneHow')}</p>
				</Empty>
			) : (
				<AllGarments shown={shown} filter={filter} onFilter={setFilter} onOpen={setOpenId} />
			)}
			{/* Below the list: it comes with the report, and nothing above may move then. */}
			{report ? <SurerPhotos report={report} /> : null}
			{garments.length > 0 ? <Grounds /> : null}
			<ImportTable />
			{report ? <NextStepLink report={report} place="garments" kindsOpen={toConfirm.length} /> : null}
			{opened ? (
				<GarmentDialog
					row={opened}
					garments={garments}
					seasonId={seasonId}
					report={report}
					onClose={() => setOpenId(null)}
					onOpen={setOpenId}
				/>
			) : null}
		</div>
	);
}
