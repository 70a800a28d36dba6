import { useEffect, useRef } from 'react';
import { say } from '../../../src/language/speak.ts';
import { Button } from '../parts/button.tsx';

/** Asked when a photo is closed with an outline drawn and not kept: nothing drawn is lost without a word. */
export function UnkeptOutline({
	isKeeping,
	onKeep,
	onDrop,
	onGoOn,
}: {
	isKeeping: boolean;
	onKeep: () => void;
	onDrop: () => void;
	onGoOn: () => void;
}) {
	const place = useRef<HTMLDivElement>(null);
	useEffect(() => place.current?.querySelector('button')?.focus(), []);
	return (
		<div ref={place} className="row unkept" role="alert">
			<strong>{say('outline.notKept')}</strong>
			<Button look="main" onPress={onKeep} isPending={isKeeping}>
				{say(isKeeping ? 'outline.keeping' : 'outline.keepAndClose')}
			</Button>
			<Button onPress={onDrop}>{say('outline.dropAndClose')}</Button>
			<Button onPress={onGoOn}>{say('outline.goOn')}</Button>
		</div>
	);
}
