import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
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
			<h2 id="makers">{say('wishList.makers')}</h2>
			<p className="quiet">{say('wishList.makersWhen', { days: say('counts.days', { count: waitingDays }) })}</p>
			<ul>
				{makers.map((maker) => (
					<li key={maker.id} className="row">
						<span>
							{maker.name} <span className="quiet">{maker.notes}</span>
						</span>
						<Button
							small
							look="bare"
							onPress={() => remove.run(maker)}
							aria-label={say('wishList.removeMaker', { name: maker.name })}
						>
							{say('wishList.remove')}
						</Button>
					</li>
				))}
			</ul>
			<div className="fields">
				<TextField
					live
					label={say('wishList.maker')}
					value={draft.name}
					onCommit={(name) => setDraft({ ...draft, name })}
				/>
				<TextField
					live
					label={say('wishList.makerWhy')}
					value={draft.notes}
					onCommit={(notes) => setDraft({ ...draft, notes })}
				/>
			</div>
			<Button onPress={() => add.run(undefined)} isPending={add.busy} isDisabled={draft.name === ''}>
				{say('wishList.addMaker')}
			</Button>
			<Problem of={add.problem ?? remove.problem} />
		</section>
	);
}
