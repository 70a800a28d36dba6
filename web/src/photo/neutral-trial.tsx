import type { LightTrial } from '../../../src/app/tried-light.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { Button } from '../parts/button.tsx';
import { BeforeAfter } from './before-after.tsx';

/** What came of the neutrals that were pointed at, before anything is kept: why, before and after, and how sure the colours are then. */
export function NeutralTrial({
	photo,
	address,
	trial,
	onKeep,
	onDrop,
}: {
	photo: PhotoRecord;
	address: string;
	trial: LightTrial;
	onKeep: () => void;
	onDrop: () => void;
}) {
	const isRefused = trial.neutrals.every(({ answer }) => answer === 'refused');
	const isAsked = trial.neutrals.some(({ answer }) => answer === 'asked');
	const model = isRefused ? (trial.neutrals[0]?.model ?? null) : (trial.light.model ?? null);
	const before = photo.reading?.trust.error;
	return (
		<div className="stack" role="status">
			{trial.neutrals.map(({ answer, sentence }, index) => (
				// Neutrals have no identity but their place.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				<p key={index} className={answer === 'taken' ? undefined : 'warn'}>
					{sentence}
				</p>
			))}
			<BeforeAfter address={address} model={model} afterWords={isRefused ? 'with it as neutral: not used' : 'after'} />
			{isRefused ? null : (
				<p className="small">
					Four times in five its colours would be off by {trial.trust.error.toFixed(0)} or less
					{before === undefined ? '.' : `; as it stands, by ${before.toFixed(0)}.`}
				</p>
			)}
			<div className="row">
				{isRefused ? null : (
					<Button look="main" onPress={onKeep}>
						{isAsked ? 'Yes, it is right: keep it' : 'Keep it'}
					</Button>
				)}
				<Button onPress={onDrop}>{isRefused ? 'Point at something else' : 'Take it back'}</Button>
			</div>
		</div>
	);
}
