import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** What was missed while wearing, one sentence each. */
export function FeltGaps({ season }: { season: Season }) {
	const [text, setText] = useState('');
	const change = useChange(
		(feltGaps: readonly string[]) => changeThing('changeSeason', season.id, season, { feltGaps }),
		() => setText(''),
	);
	return (
		<div className="stack">
			<h2>{say('lookBackPage.missed')}</h2>
			<ul>
				{season.feltGaps.map((gap, index) => (
					<li key={gap} className="row">
						<span>{gap}</span>
						<Button
							small
							look="bare"
							onPress={() => change.run(season.feltGaps.filter((_, at) => at !== index))}
							aria-label={say('lookBackPage.strikeOne', { gap })}
						>
							{say('lookBackPage.strike')}
						</Button>
					</li>
				))}
			</ul>
			<form
				className="stack"
				onSubmit={(event) => {
					event.preventDefault();
					if (text.trim() && !season.feltGaps.includes(text.trim())) change.run([...season.feltGaps, text.trim()]);
				}}
			>
				<TextField
					live
					label={say('lookBackPage.iMissed')}
					value={text}
					maxLength={500}
					placeholder={say('lookBackPage.missedExample')}
					onCommit={setText}
				/>
				<Button type="submit" isPending={change.busy} isDisabled={text.trim() === ''}>
					{say('lookBackPage.note')}
				</Button>
			</form>
			<Problem of={change.problem} />
		</div>
	);
}
