import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { memo, useCallback, useLayoutEffect, useRef, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Kind } from '../../../../src/wardrobe/words/kind.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { KindSelect } from '../../parts/kind-select.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import type { GarmentRow } from './garment-filter.ts';

const ROW_HEIGHT = 104;
/** Frames within which a row that was scrolled to is drawn. */
const FRAMES_TO_DRAW = 20;

/** Its kind, and whether that is only suggested. */
function KindPicker({ row, onNext }: { row: GarmentRow; onNext: () => void }) {
	const { id, name, kind, kindFrom } = row.garment;
	const change = useChange((next: Kind) => changeThing('changeGarment', id, row.garment, { kind: next }));
	const confirm = () => {
		change.run(kind);
		onNext();
	};
	return (
		<span className="kind-picker">
			<KindSelect
				open={kindFrom !== 'user'}
				label={say('garments.kindOf', { name })}
				kind={kind}
				onSay={change.run}
				onEnter={onNext}
			/>
			{kindFrom === 'user' ? null : (
				<button
					type="button"
					className="link-button small"
					onClick={confirm}
					aria-label={say('garments.confirm', { kind: say(`kinds.${kind}`), name })}
				>
					{say(kindFrom === 'photo' ? 'garments.suggested' : 'garments.notKnown')}
				</button>
			)}
			{change.problem ? <span className="warn small">{change.problem.message}</span> : null}
		</span>
	);
}

/** Where it is, and what stands out about it. */
const standing = ({ garment, said }: GarmentRow): string =>
	[
		say(`whereabouts.${garment.place}`),
		garment.basic && say('garments.basic'),
		said?.loner?.flagged && say('garments.loner'),
		said && said.twins.length > 0 && say('garments.twinCount', { count: said.twins.length }),
	]
		.filter(Boolean)
		.join(', ');

const Row = memo(function Row({
	row,
	chosen,
	onToggle,
	onOpen,
	onNextKind,
}: {
	row: GarmentRow;
	chosen: boolean;
	onToggle: (id: string, on: boolean) => void;
	onOpen: (id: string) => void;
	onNextKind: (id: string) => void;
}) {
	const { garment, said } = row;
	return (
		<article className="garment-row" aria-label={garment.name}>
			<input
				type="checkbox"
				aria-label={say('garments.choose', { name: garment.name })}
				checked={chosen}
				onChange={(event) => onToggle(garment.id, event.target.checked)}
			/>
			<GarmentPhoto garment={garment} />
			<div className="garment-words">
				<button type="button" className="link-button tile-name" onClick={() => onOpen(garment.id)}>
					{garment.name || say('garments.unnamed')}
				</button>
				<span className="small quiet">{standing(row)}</span>
			</div>
			<KindPicker row={row} onNext={() => onNextKind(garment.id)} />
			<SwatchStrip swatches={garment.swatches} label={say('garments.coloursOf', { name: garment.name })} />
			<span className="garment-fit">
				{garment.swatches.length === 0 ? (
					<span className="small quiet">{say('garments.noColours')}</span>
				) : said ? (
					<VerdictMark {...said.fit} />
				) : (
					<span className="small quiet loading">{say('garments.compared')}</span>
				)}
				{said ? <span className="small quiet">{say('garments.partners', { count: said.partnerCount })}</span> : null}
			</span>
		</article>
	);
});

/** The garments as a list of which only what is on view is drawn, so that 2,000 scroll like 20. */
export function GarmentList({
	rows,
	chosen,
	onToggle,
	onOpen,
}: {
	rows: readonly GarmentRow[];
	chosen: ReadonlySet<string>;
	onToggle: (id: string, on: boolean) => void;
	onOpen: (id: string) => void;
}) {
	const list = useRef<HTMLUListElement>(null);
	const [top, setTop] = useState(0);
	useLayoutEffect(() => {
		const measure = () => list.current && setTop(list.current.getBoundingClientRect().top + window.scrollY);
		measure();
		// What stands above comes and goes: kinds to confirm, what can be done with those chosen.
		const watcher = new ResizeObserver(measure);
		watcher.observe(document.body);
		return () => watcher.disconnect();
	}, []);
	const virtual = useWindowVirtualizer({
		count: rows.length,
		estimateSize: () => ROW_HEIGHT,
		getItemKey: (index) => rows[index]!.garment.id,
		overscan: 6,
		scrollMargin: top,
	});
	// The next one may lie beyond what is drawn: it is scrolled to, and takes the focus once it is there.
	const rowsNow = useRef(rows);
	rowsNow.current = rows;
	const onNextKind = useCallback(
		(after: string) => {
			const all = rowsNow.current;
			const at = all.findIndex(({ garment }) => garment.id === after);
			const isOpen = ({ garment }: GarmentRow, index: number) => garment.kindFrom !== 'user' && index !== at;
			const next = all.findIndex((row, index) => index > at && isOpen(row, index));
			const index = next === -1 ? all.findIndex(isOpen) : next;
			const id = all[index]?.garment.id;
			if (id === undefined) return;
			virtual.scrollToIndex(index);
			const tryFocus = (tries: number) => {
				const field = list.current?.querySelector<HTMLElement>(`[data-row="${CSS.escape(id)}"] [data-kind-open]`);
				if (field) field.focus({ preventScroll: true });
				else if (tries > 0) requestAnimationFrame(() => tryFocus(tries - 1));
			};
			tryFocus(FRAMES_TO_DRAW);
		},
		[virtual],
	);
	return (
		<>
			<p className="small quiet" role="status">
				{say('garments.shown', { count: rows.length })}
			</p>
			<ul ref={list} className="garment-list" style={{ height: virtual.getTotalSize() }}>
				{virtual.getVirtualItems().map(({ index, key, start }) => (
					<li
						key={key}
						ref={virtual.measureElement}
						data-index={index}
						data-row={key}
						style={{ transform: `translateY(${start - top}px)` }}
						aria-setsize={rows.length}
						aria-posinset={index + 1}
					>
						<Row
							row={rows[index]!}
							chosen={chosen.has(rows[index]!.garment.id)}
							onToggle={onToggle}
							onOpen={onOpen}
							onNextKind={onNextKind}
						/>
					</li>
				))}
			</ul>
		</>
	);
}
