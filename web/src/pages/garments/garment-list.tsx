import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { memo, useLayoutEffect, useRef, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { KIND_NAMES, type Kind } from '../../../../src/wardrobe/words/kind.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import type { GarmentRow } from './garment-filter.ts';

const ROW_HEIGHT = 104;

const KindPicker = ({ row }: { row: GarmentRow }) => {
	const { id, name, kind, kindFrom } = row.garment;
	const change = useChange((next: Kind) => changeThing('changeGarment', id, row.garment, { kind: next }));
	return (
		<span className="kind-picker">
			<select
				className="select"
				aria-label={say('garments.kindOf', { name })}
				value={kind}
				onChange={(event) => change.run(event.target.value as Kind)}
			>
				{KIND_NAMES.map((one) => (
					<option key={one} value={one}>
						{say(`kinds.${one}`)}
					</option>
				))}
			</select>
			{kindFrom === 'user' ? null : (
				<button
					type="button"
					className="link-button small"
					onClick={() => change.run(kind)}
					aria-label={say('garments.confirm', { kind: say(`kinds.${kind}`), name })}
				>
					{say(kindFrom === 'photo' ? 'garments.suggested' : 'garments.notKnown')}
				</button>
			)}
			{change.problem ? <span className="warn small">{change.problem.message}</span> : null}
		</span>
	);
};

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
}: {
	row: GarmentRow;
	chosen: boolean;
	onToggle: (id: string, on: boolean) => void;
	onOpen: (id: string) => void;
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
			<KindPicker row={row} />
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
		if (list.current) setTop(list.current.getBoundingClientRect().top + window.scrollY);
	}, []);
	const virtual = useWindowVirtualizer({
		count: rows.length,
		estimateSize: () => ROW_HEIGHT,
		getItemKey: (index) => rows[index]!.garment.id,
		overscan: 6,
		scrollMargin: top,
	});
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
						style={{ transform: `translateY(${start - top}px)` }}
						aria-setsize={rows.length}
						aria-posinset={index + 1}
					>
						<Row row={rows[index]!} chosen={chosen.has(rows[index]!.garment.id)} onToggle={onToggle} onOpen={onOpen} />
					</li>
				))}
			</ul>
		</>
	);
}
