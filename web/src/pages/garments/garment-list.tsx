import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type RefObject, useCallback, useLayoutEffect, useRef, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { GarmentRow } from './garment-filter.ts';
import { GarmentListRow } from './garment-list-row.tsx';

const ROW_HEIGHT = 104;
/** Frames within which a row that was scrolled to is drawn. */
const FRAMES_TO_DRAW = 20;

/** Where the list begins on the page, in pixels. What stands above comes and goes: kinds to confirm, what can be done with those chosen. */
function useTop(list: RefObject<HTMLElement | null>): number {
	const [top, setTop] = useState(0);
	useLayoutEffect(() => {
		const measure = () => list.current && setTop(list.current.getBoundingClientRect().top + window.scrollY);
		measure();
		const watcher = new ResizeObserver(measure);
		watcher.observe(document.body);
		return () => watcher.disconnect();
	}, [list]);
	return top;
}

/** Place of the next garment whose kind is to be confirmed, below this one or else from the top; -1 = there is none. */
function placeOfNextOpen(rows: readonly GarmentRow[], after: string): number {
	const at = rows.findIndex(({ garment }) => garment.id === after);
	const isOpen = ({ garment }: GarmentRow, index: number) => garment.kindFrom !== 'user' && index !== at;
	const below = rows.findIndex((row, index) => index > at && isOpen(row, index));
	return below === -1 ? rows.findIndex(isOpen) : below;
}

/** Goes on to the next kind to confirm. It may lie beyond what is drawn: it is scrolled to, and takes the focus once it is there. */
function useNextKind(
	rows: readonly GarmentRow[],
	list: RefObject<HTMLElement | null>,
	virtual: { scrollToIndex(index: number): void },
): (after: string) => void {
	const rowsNow = useRef(rows);
	rowsNow.current = rows;
	return useCallback(
		(after: string) => {
			const index = placeOfNextOpen(rowsNow.current, after);
			const id = rowsNow.current[index]?.garment.id;
			if (id === undefined) return;
			virtual.scrollToIndex(index);
			const tryFocus = (tries: number) => {
				const field = list.current?.querySelector<HTMLElement>(`[data-row="${CSS.escape(id)}"] [data-kind-open]`);
				if (field) field.focus({ preventScroll: true });
				else if (tries > 0) requestAnimationFrame(() => tryFocus(tries - 1));
			};
			tryFocus(FRAMES_TO_DRAW);
		},
		[list, virtual],
	);
}

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
	const top = useTop(list);
	const virtual = useWindowVirtualizer({
		count: rows.length,
		estimateSize: () => ROW_HEIGHT,
		getItemKey: (index) => rows[index]!.garment.id,
		overscan: 6,
		scrollMargin: top,
	});
	const onNextKind = useNextKind(rows, list, virtual);
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
						<GarmentListRow
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
