import { useQuery } from '@tanstack/react-query';
import { dayText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import type { BinEntry } from '../../../../src/store/store.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

const nameOf = (entry: BinEntry): string => entry.name || say('garments.unnamed');

/** What was thrown away in the last 90 days, to be taken out again; `onTakenOut` hears the name of what came back. */
export function Bin({ onTakenOut }: { onTakenOut: (name: string) => void }) {
	const { data: entries = [], error } = useQuery({ queryKey: ['bin'], queryFn: () => call('listBin', {}) });
	const restore = useChange(
		({ id }: BinEntry) => call('restoreFromBin', { params: { id } }),
		(_answer, entry) => onTakenOut(nameOf(entry)),
	);
	return (
		<section className="section" aria-labelledby="bin">
			<h2 id="bin">{say('binPage.title')}</h2>
			<Problem of={error ?? restore.problem} />
			{entries.length === 0 ? (
				<p className="quiet">{say('binPage.empty')}</p>
			) : (
				<ul>
					{entries.map((entry) => (
						<li key={entry.id} className="row">
							<span>
								{nameOf(entry)}{' '}
								<span className="quiet">
									{say('binPage.entry', { what: say(`nouns.${entry.what}`), day: dayText(entry.deletedAt) })}
								</span>
							</span>
							<Button
								small
								onPress={() => restore.run(entry)}
								aria-label={say('binPage.takeOutOne', { name: nameOf(entry) })}
							>
								{say('binPage.takeOut')}
							</Button>
						</li>
					))}
				</ul>
			)}
		</section>
	);
}
