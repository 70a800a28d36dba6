import { say } from '../../../../src/language/speak.ts';
import type { WishStanding } from '../../../../src/wardrobe/wishes/wishes.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { useInspirations } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Swatch } from '../../parts/swatch.tsx';
import { PiecePicture } from '../../photo/piece-picture.tsx';
import { WishFields } from './wish-fields.tsx';
import { WishWords } from './wish-words.tsx';

/** How a wish ends, or begins again. */
function WishEnds({ wish, onState }: { wish: Wish; onState: (state: Wish['state']) => void }) {
	if (wish.state !== 'open')
		return (
			<Button small onPress={() => onState('open')}>
				{say('wishList.again')}
			</Button>
		);
	return (
		<>
			<Button small onPress={() => onState('answered')}>
				{say('wishList.answered')}
			</Button>
			<Button small onPress={() => onState('dropped')}>
				{say('wishList.dropped')}
			</Button>
		</>
	);
}

/** One wish: what is looked for, how long it has been wanted, and where to look. */
export function WishCard({
	wish,
	standing,
	season,
}: {
	wish: Wish;
	standing: WishStanding | undefined;
	season: Season;
}) {
	const { data: inspirations = [] } = useInspirations(season.id);
	const photoId = inspirations.find(({ id }) => id === wish.seenIn)?.photoId;
	const change = useChange((changes: Partial<Wish>) => changeThing('changeWish', wish.id, wish, changes));
	const strike = useChange(() => removeThing('removeWish', wish.id, wish));
	return (
		<article className="wish" aria-label={wish.name}>
			<header>
				<h3>{wish.name}</h3>
				{standing ? (
					<span className="quiet">
						{say(standing.place === 1 ? 'wishList.first' : 'wishList.place', { place: standing.place })}
					</span>
				) : (
					<span className="italic">{say(`wishList.state_${wish.state}`)}</span>
				)}
			</header>
			<span className="seen-piece">
				<PiecePicture photoId={photoId} slot={wish.slot} alt={say('wishPage.pieceOf', { name: wish.name })} />
				{wish.target ? (
					<Swatch lab={wish.target} note={say('wishes.orNear')} />
				) : (
					<span className="quiet">{say('wishList.anyOfPalette')}</span>
				)}
			</span>
			{standing ? <WishWords standing={standing} waitingDays={season.waitingDays} /> : null}
			<WishFields wish={wish} onChange={change.run} />
			<span className="row">
				<WishEnds wish={wish} onState={(state) => change.run({ state })} />
				<Button
					small
					look="bare"
					onPress={() => strike.run(undefined)}
					aria-label={say('wishList.binWish', { name: wish.name })}
				>
					{say('frame.toBin')}
				</Button>
			</span>
			<Problem of={change.problem ?? strike.problem} />
		</article>
	);
}
