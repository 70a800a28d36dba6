import { say } from '../../../../src/language/speak.ts';
import type { WishStanding } from '../../../../src/wardrobe/wishes/wishes.ts';

/** Where an open wish stands: why it is worth wanting, whom to ask, and how long until new is allowed. */
export function WishWords({ standing, waitingDays }: { standing: WishStanding; waitingDays: number }) {
	const { sentence, makers, newInDays } = standing;
	return (
		<>
			<p>{sentence}</p>
			{makers.length > 0 ? (
				<p className="small">{say('wishList.trusted', { names: makers.map(({ name }) => name).join(', ') })}</p>
			) : null}
			{newInDays > 0 ? (
				<p className="small quiet">
					<progress value={waitingDays - newInDays} max={waitingDays} aria-label={say('wishList.waited')} />{' '}
					{say('wishList.untilNew', { days: say('counts.days', { count: newInDays }) })}
				</p>
			) : null}
		</>
	);
}
