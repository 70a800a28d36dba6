import { memo } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Kind } from '../../../../src/wardrobe/words/kind.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { KindSelect } from '../../parts/kind-select.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import type { GarmentRow } from './garment-filter.ts';

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

/** One garment of the list; drawn anew only where something of it changed. */
export const GarmentListRow = memo(function GarmentListRow({
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
					<VerdictMark {...said.fit} brief />
				) : (
					<span className="small quiet loading">{say('garments.compared')}</span>
				)}
				{said ? <span className="small quiet">{say('garments.partners', { count: said.partnerCount })}</span> : null}
			</span>
		</article>
	);
});
