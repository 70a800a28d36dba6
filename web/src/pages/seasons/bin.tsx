import { useQuery } from '@tanstack/react-query';
import { dayText } from '../../../../src/language/numbers.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

/** What was thrown away in the last 90 days, to be taken out again. */
export function Bin() {
	const { data: entries = [], error } = useQuery({ queryKey: ['bin'], queryFn: () => call('listBin', {}) });
	const restore = useChange((id: string) => call('restoreFromBin', { params: { id: id } }));
	return (
		<section className="section" aria-labelledby="bin">
			<h2 id="bin">The bin</h2>
			<Problem of={error ?? restore.problem} />
			{entries.length === 0 ? (
				<p className="quiet">It is empty. What you throw away lies here for 90 days.</p>
			) : (
				<ul>
					{entries.map((entry) => (
						<li key={entry.id} className="row">
							<span>
								{entry.name || 'without a name'}{' '}
								<span className="quiet">
									({entry.what}, {dayText(entry.deletedAt)})
								</span>
							</span>
							<Button small onPress={() => restore.run(entry.id)} aria-label={`Take ${entry.name} out of the bin`}>
								Take it out
							</Button>
						</li>
					))}
				</ul>
			)}
		</section>
	);
}
