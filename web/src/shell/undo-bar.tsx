import { useEffect, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { Button } from '../parts/button.tsx';

/** Long enough to read two lines of it; a screen reader has said it by then. */
const TOLD_MS = 10_000;

/** Takes back the last decision, or does it again, and says which one that was. */
export function UndoBar() {
	const [told, setTold] = useState('');
	const move = useChange(
		(way: 'undo' | 'redo') => call(way, {}),
		({ sentence, undone }) => setTold(say(undone ? 'frame.undone' : 'frame.redone', { sentence })),
	);
	useEffect(() => setTold(move.problem?.message ?? ''), [move.problem]);
	useEffect(() => {
		if (told === '') return;
		const timer = setTimeout(() => setTold(''), TOLD_MS);
		return () => clearTimeout(timer);
	}, [told]);
	const press = (way: 'undo' | 'redo') => {
		setTold('');
		move.run(way);
	};
	return (
		<span className="row">
			<Button look="bare" small onPress={() => press('undo')} isPending={move.busy}>
				{say('frame.undo')}
			</Button>
			<Button look="bare" small onPress={() => press('redo')} isPending={move.busy}>
				{say('frame.redo')}
			</Button>
			<span className="told" role="status">
				{told}
			</span>
		</span>
	);
}
