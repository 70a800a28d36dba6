import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';
import { PROOF_SECONDS, type Proof } from './proof.ts';

/** Builds the set, or looks for a better one than stands there. */
export function BuildTools({
	hasSet,
	isEmpty,
	building,
	onBuild,
	proof,
	onProve,
}: {
	hasSet: boolean;
	/** Nothing is on the rail to choose from. */
	isEmpty: boolean;
	building: boolean;
	onBuild: () => void;
	proof: Proof;
	onProve: () => void;
}) {
	return (
		<span className="row">
			<Button look="main" onPress={onBuild} isPending={building} isDisabled={isEmpty}>
				{say(building ? 'set.searching' : hasSet ? 'set.buildAnew' : 'set.build')}
			</Button>
			{proof.secondsGone === null ? (
				<Button onPress={onProve} isDisabled={isEmpty || building || !hasSet}>
					{say('set.prove')}
				</Button>
			) : (
				<>
					<progress max={PROOF_SECONDS} value={proof.secondsGone} aria-label={say('set.proving')} />
					<Button onPress={proof.stop}>{say('set.stop')}</Button>
				</>
			)}
		</span>
	);
}
