import { say } from '../../../../src/language/speak.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { removeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Check } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** The two ways a piece found for sale can end, beside a comparison, or in the bin. */
export function CandidateEnds({
	candidate,
	compared,
	mayTake,
	onCompare,
}: {
	candidate: CandidateDetails;
	/** Whether the advice is to take it: only then is buying the button that stands out. */
	mayTake: boolean;
	compared: boolean;
	onCompare: (on: boolean) => void;
}) {
	const { id, name } = candidate;
	const end = useChange((word: 'bought' | 'passed') =>
		call(word === 'bought' ? 'buyCandidate' : 'passCandidate', { params: { id } }),
	);
	const remove = useChange(() => removeThing('removeCandidate', id, candidate));
	return (
		<>
			<div className="row">
				<Button
					look={mayTake ? 'main' : 'plain'}
					onPress={() => end.run('bought')}
					isPending={end.busy}
					aria-label={say('shopPage.boughtOne', { name })}
				>
					{say('shopPage.bought')}
				</Button>
				<Button onPress={() => end.run('passed')} isPending={end.busy} aria-label={say('shopPage.passedOne', { name })}>
					{say('shopPage.passed')}
				</Button>
				<Check label={say('shopPage.compare')} checked={compared} onChange={onCompare} />
				<Button small look="bare" onPress={() => remove.run(undefined)} aria-label={say('shopPage.binOne', { name })}>
					{say('frame.toBin')}
				</Button>
			</div>
			<Problem of={end.problem ?? remove.problem} />
		</>
	);
}
