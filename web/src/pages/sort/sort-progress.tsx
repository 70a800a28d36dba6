import { say } from '../../../../src/language/speak.ts';

/** How far the round is: in words, and as a bar that fits them. */
export function SortProgress({ decided, count }: { decided: number; count: number }) {
	return (
		<div>
			<p role="status">{say('sort.progress', { decided, count })}</p>
			<progress value={decided} max={count} aria-label={say('sort.progressLabel')} />
		</div>
	);
}
