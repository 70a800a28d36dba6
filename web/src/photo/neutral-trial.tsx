import type { LightTrial } from '../../../src/app/tried-light.ts';
import { say } from '../../../src/language/speak.ts';
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
	const after = trial.trust.error.toFixed(0);
	return (
		<div className="stack" role="status">
			{trial.neutrals.map(({ answer, sentence }, index) => (
				// Neutrals have no identity but their place.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				<p key={index} className={answer === 'taken' ? undefined : 'warn'}>
					{sentence}
				</p>
			))}
			<BeforeAfter
				address={address}
				model={model}
				afterWords={say(isRefused ? 'lightTools.refused' : 'lightTools.after')}
			/>
			{isRefused ? null : (
				<p className="small">
					{before === undefined
						? say('lightTools.wouldStand', { after })
						: say('lightTools.stands', { after, before: before.toFixed(0) })}
				</p>
			)}
			<div className="row">
				{isRefused ? null : (
					<Button look="main" onPress={onKeep}>
						{say(isAsked ? 'lightTools.isRight' : 'lightTools.keepIt')}
					</Button>
				)}
				<Button onPress={onDrop}>{say(isRefused ? 'lightTools.another' : 'lightTools.takeItBack')}</Button>
			</div>
		</div>
	);
}
