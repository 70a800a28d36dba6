import { useState } from 'react';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import type { Maker } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { removeThing } from '../../api/change-thing.ts';
import { useMakers } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

/** Makers the user trusts, for when a wish has waited long enough that new is allowed. */
export function Makers({ waitingDays }: { waitingDays: number }) {
	const { data: makers = [] } = useMakers();
	const [draft, setDraft] = useState({ name: '', notes: '' });
	const add = useChange(
		() => call('addMaker', { body: draft }),
		() => setDraft({ name: '', notes: '' }),
	);
	const remove = useChange((maker: Maker) => removeThing('removeMaker', maker.id, maker));
	return (
		<section className="section stack" aria-labelledby="makers">
			<h2 id="makers">Makers you trust</h2>
			<p className="quiet">
				Shown with a wish once it has waited {counted(waitingDays, 'day')}. You set the waiting time under Season.
			</p>
			<ul>
				{makers.map((maker) => (
					<li key={maker.id} className="row">
						<span>
							{maker.name} <span className="quiet">{maker.notes}</span>
						</span>
						<Button small look="bare" onPress={() => remove.run(maker)} aria-label={`Remove ${maker.name}`}>
							Remove
						</Button>
					</li>
				))}
			</ul>
			<div className="fields">
				<TextField live label="Maker" value={draft.name} onCommit={(name) => setDraft({ ...draft, name })} />
				<TextField live label="Why, or where" value={draft.notes} onCommit={(notes) => setDraft({ ...draft, notes })} />
			</div>
			<Button onPress={() => add.run(undefined)} isPending={add.busy} isDisabled={draft.name === ''}>
				Add the maker
			</Button>
			<Problem of={add.problem ?? remove.problem} />
		</section>
	);
}
