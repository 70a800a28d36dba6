import { say } from '../../../src/language/speak.ts';
/** Said while something is on its way; drawn only when it takes long enough to be noticed. */
export function Loading({ what }: { what: string }) {
	return (
		<p className="loading quiet italic" role="status">
			{say('frame.fetching', { what })}
		</p>
	);
}
