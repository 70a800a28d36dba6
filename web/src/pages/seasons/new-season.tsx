import { useState } from 'react';
import { useLocation } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { nextSeason, todayHere } from './season-dates.ts';

/** Name and dates of a season to begin; `from` = another one whose board, palette and numbers it takes over. */
export function NewSeason({ from }: { from?: Season }) {
	const [season, setSeason] = useState(() => nextSeason(todayHere(new Date())));
	const [, go] = useLocation();
	const start = useChange(
		() =>
			from ? call('copySeason', { params: { id: from.id }, body: season }) : call('startSeason', { body: season }),
		(made) => go(addressOf(made.id, 'direction')),
	);
	return (
		<form
			className="stack"
			onSubmit={(event) => {
				event.preventDefault();
				start.run(undefined);
			}}
		>
			<div className="fields">
				<TextField
					live
					label={say('fields.name')}
					value={season.name}
					required
					maxLength={200}
					onCommit={(name) => setSeason({ ...season, name })}
				/>
				<TextField
					live
					label={say('seasonsPage.from')}
					type="date"
					value={season.startsOn}
					onCommit={(startsOn) => setSeason({ ...season, startsOn })}
				/>
				<TextField
					live
					label={say('seasonsPage.to')}
					type="date"
					value={season.endsOn}
					onCommit={(endsOn) => setSeason({ ...season, endsOn })}
				/>
			</div>
			<Button type="submit" look="main" isPending={start.busy}>
				{from ? say('seasonsPage.startItFrom', { name: from.name }) : say('seasonsPage.start')}
			</Button>
			<Problem of={start.problem} />
		</form>
	);
}
