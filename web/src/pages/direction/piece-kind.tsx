import { say } from '../../../../src/language/speak.ts';
import type { SeenPiece } from '../../../../src/wardrobe/pictures/picture.ts';
import { KIND_NAMES, type Kind } from '../../../../src/wardrobe/words/kind.ts';
import type { Inspiration } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

/** Kinds offered by a tap of their own where the kind is a guess. */
const OFFERED = 2;

/** The user's word on what a piece of a picture is: one tap for the two likeliest, a list for the rest. It wins over the reading. */
export function PieceKind({ piece, name, inspiration }: { piece: SeenPiece; name: string; inspiration: Inspiration }) {
	const tell = useChange((kind: Kind) => {
		const others = (inspiration.pieceKinds ?? []).filter((one) => one.piece !== piece.place);
		const pieceKinds = [...others, { piece: piece.place, kind }];
		return changeThing('changeInspiration', inspiration.id, inspiration, { pieceKinds });
	});
	const offered = piece.kind === null ? piece.kinds.slice(0, OFFERED) : [];
	return (
		<span className="piece-kind">
			{offered.map(({ kind }) => (
				<Button
					key={kind}
					small
					onPress={() => tell.run(kind)}
					isPending={tell.busy}
					aria-label={`${say('wearPage.sayKind', { name })}: ${say(`kinds.${kind}`)}`}
				>
					{say('wearPage.isKind', { kind: say(`kinds.${kind}`) })}
				</Button>
			))}
			<select
				className="select select-small"
				aria-label={say('wearPage.sayKind', { name })}
				value={piece.kind ?? ''}
				onChange={(event) => tell.run(event.target.value as Kind)}
			>
				{piece.kind === null ? <option value="">{say('wearPage.otherKind')}</option> : null}
				{KIND_NAMES.map((kind) => (
					<option key={kind} value={kind}>
						{say(`kinds.${kind}`)}
					</option>
				))}
			</select>
			<Problem of={tell.problem} />
		</span>
	);
}
