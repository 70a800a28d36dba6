import { type CSSProperties, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { PhotoRecord } from '../../../../src/store/store.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../../../src/wardrobe/words/kind.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, versionsSeen } from '../../api/change-thing.ts';
import { usePhotos } from '../../api/photos.ts';
import { Button } from '../../parts/button.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { useKeptFocus } from '../../parts/kept-focus.ts';
import { focusNextKind, KindSelect } from '../../parts/kind-select.tsx';
import { Problem } from '../../parts/problem.tsx';
import { type KindGroup, kindGroups, SHOWN_AT_A_TIME } from './kinds-to-confirm.ts';
import { SplitPhoto } from './split-photo.tsx';

/** What is done about a piece that is asked about. */
type Asking = {
	readonly onOpen: (id: string) => void;
	/** Goes on to the next one by keyboard. */
	readonly onNext: () => void;
	/** Its photo shows two garments. */
	readonly onSplit: (garment: Garment) => void;
};

/** One piece: its photo, and what it is, to be put right. */
function PieceToConfirm({
	garment,
	photo,
	onOpen,
	onNext,
	onSplit,
}: Asking & { garment: Garment; photo: PhotoRecord | undefined }) {
	const { id, name, kind } = garment;
	const change = useChange((next: Kind) => changeThing('changeGarment', id, garment, { kind: next }));
	const likely = (photo?.reading?.kindGuesses ?? []).slice(0, 3).map((guess) => guess.kind);
	return (
		<li className="tile" data-piece={id}>
			<button
				type="button"
				className="tile-button"
				aria-label={say('confirm.open', { name })}
				onClick={() => onOpen(id)}
			>
				<GarmentPhoto garment={garment} />
			</button>
			<KindSelect
				open
				label={say('confirm.kindOf', { name })}
				kind={kind}
				likely={likely}
				onSay={change.run}
				onEnter={onNext}
			/>
			{photo?.reading?.proposal ? (
				<Button small onPress={() => onSplit(garment)} aria-label={say('confirm.twoHereIn', { name })}>
					{say('confirm.twoHere')}
				</Button>
			) : null}
			{change.problem ? <span className="warn small">{change.problem.message}</span> : null}
		</li>
	);
}

function useConfirm() {
	return useChange((garments: readonly Garment[]) =>
		call('changeGarments', {
			body: {
				ids: garments.map(({ id }) => id),
				versions: versionsSeen(garments),
				changes: { kindFrom: 'user' },
			},
		}),
	);
}

function Group({
	group: { kind, garments },
	photos,
	...asking
}: Asking & { group: KindGroup; photos: ReadonlyMap<string, PhotoRecord> }) {
	const confirm = useConfirm();
	const title = `kind-${kind ?? 'unknown'}`;
	return (
		<section className="stack kind-group" aria-labelledby={title}>
			<div className="row">
				<h3 id={title} tabIndex={-1} data-focus-next>
					{kind ? say('confirm.group', { kind: say(`kinds.${kind}`) }) : say('confirm.unknown')}
				</h3>
				{kind ? (
					<Button small onPress={() => confirm.run(garments)} isPending={confirm.busy}>
						{say('confirm.isRight', { count: garments.length })}
					</Button>
				) : null}
			</div>
			<Problem of={confirm.problem} />
			<ul className="picks" style={{ '--kind-letters': kind ? say(`kinds.${kind}`).length : 0 } as CSSProperties}>
				{garments.map((garment) => (
					<PieceToConfirm
						key={garment.id}
						garment={garment}
						photo={photos.get(garment.photoIds[0] ?? '')}
						{...asking}
					/>
				))}
			</ul>
		</section>
	);
}

/** Kinds that are only suggested, many at a time: what is wrong is put right piece by piece, the rest is confirmed at one press. */
export function ConfirmKinds({ garments, onOpen }: { garments: readonly Garment[]; onOpen: (id: string) => void }) {
	const shown = garments.slice(0, SHOWN_AT_A_TIME);
	const photos = usePhotos(shown.flatMap(({ photoIds }) => photoIds.slice(0, 1)));
	const place = useKeptFocus<HTMLElement>(garments.length);
	const [splitting, setSplitting] = useState<Garment | null>(null);
	const confirm = useConfirm();
	const suggested = shown.filter(({ kindFrom }) => kindFrom === 'photo');
	const later = garments.length - shown.length;
	return (
		<section ref={place} className="section stack" aria-labelledby="confirm-kinds">
			<h2 id="confirm-kinds">
				{say('confirm.title')} <span className="small quiet">{garments.length}</span>
			</h2>
			<p className="quiet">{say('confirm.how')}</p>
			<div className="kind-groups">
				{kindGroups(shown).map((group) => (
					<Group
						key={group.kind ?? 'unknown'}
						group={group}
						photos={photos}
						onOpen={onOpen}
						onNext={() => focusNextKind(place.current)}
						onSplit={setSplitting}
					/>
				))}
			</div>
			<div className="row">
				{suggested.length > 0 ? (
					<Button look="main" onPress={() => confirm.run(suggested)} isPending={confirm.busy}>
						{say('confirm.allRight', { count: suggested.length })}
					</Button>
				) : null}
				{later > 0 ? <span className="small quiet">{say('confirm.more', { count: later })}</span> : null}
			</div>
			<Problem of={confirm.problem} />
			{splitting?.photoIds[0] ? (
				<SplitPhoto
					garment={splitting}
					photoId={splitting.photoIds[0]}
					onClose={() => setSplitting(null)}
					onDone={() => setSplitting(null)}
				/>
			) : null}
		</section>
	);
}
